/** What must be said when finds, people or rights could be hurt by what is passed on. */
export interface CautionList {
  readonly title: string;
  readonly points: readonly string[];
}

export const HANDLING: CautionList = {
  title: 'The finds',
  points: [
    'Charred, mineralised, dried, frozen and waterlogged fabrics can be destroyed by touch, unfolding, drying, brushing or a scale bar laid on them. Keep the burial condition: wet stays wet and dark, dry stays dry.',
    'Do not clean a find or pull threads to count. Photograph first; count from images where you can.',
    'Sampling for fibre, dye or date destroys. Ask a conservator and the responsible authority before; the law of the land decides on finding, exporting, sampling and publishing.',
    'Nothing here gives permission to do any of it, and no result is an opinion on value or authenticity.',
  ],
};

export const RIGHTS: CautionList = {
  title: 'People, places and rights',
  points: [
    'Fabrics of Indigenous and descendant communities: ask who may decide, and keep to their terms in every export (CARE principles).',
    'Unguarded caves, graves, wrecks and wetlands: publish places coarsened to a region or a wide grid, and look through remarks for places named in free text. Thrum hands coordinates on as the sources give them, unless a row is marked “unguarded” or the study says “coarsenPlaces”; the tables themselves, among Everything, stay as they are.',
    'Textiles on or with human remains come under the consent, law and wishes that hold for the remains.',
    'Facts may be compiled, but whole tables, long descriptions and pictures of others have rights: keep each source’s citation and licence, and name the recorder.',
    'Remarks and recorders’ names travel with the normalised table. Take them out where they are personal.',
  ],
};
