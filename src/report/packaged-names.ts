/** What the files of a data package are called; apart from what makes them, since whoever unpacks one needs the names alone. */
export const PACKAGED_TABLE = 'fragments.csv';
/** The study that reads the table, and the profile it may need. */
export const PACKAGED_STUDY = 'fragments.study.json';
export const PACKAGED_PROFILE = 'fragments.profile.json';
