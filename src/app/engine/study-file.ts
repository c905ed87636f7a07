import { InputError } from '../../errors.ts';
import { parseJson } from '../../sources/formats/parse-json.ts';
import { checkStudy } from '../../study/load.ts';
import { askingOnly } from '../../study/some-asked.ts';
import { complete, type StudyDocument } from '../state/workspace.ts';
import type { StudyFileView } from './protocol.ts';

/**
 * A JSON file that was brought. A study whose sources or settings cannot be understood is refused, as the
 * command line refuses it; an analysis that cannot be asked is said where results are made of it.
 */
export function readStudyFile(text: string, name: string): StudyFileView {
  try {
    const value = parseJson(text, name);
    if (!isStudyLike(value)) return { study: null, fault: null };
    const study = complete(value);
    checkStudy(study.sources.length === 0 ? study : askingOnly(study, []), name);
    return { study, fault: null };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { study: null, fault: fault.message };
  }
}

function isStudyLike(value: unknown): value is Partial<StudyDocument> {
  return typeof value === 'object' && value !== null && ('sources' in value || 'analyses' in value);
}
