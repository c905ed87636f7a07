import { saveBack } from '../files.ts';
import { useWorkbench } from '../state/workbench.tsx';
import { studyText } from '../state/workspace.ts';
import { Button } from './controls.tsx';
import { count } from './numbers.ts';

/** What the reader must know of how the work is kept: edits on a served file, another window, no room. */
export function SessionNotes() {
  const { keeping, edits, served, baseChanged, settleBase, workspace } = useWorkbench();
  return (
    <>
      <p className="hidden-text" role="status" data-kept={keeping.state}>
        {keeping.state === 'kept' ? 'What was done is kept in this browser.' : ''}
      </p>
      {edits.length === 0 || served === null ? null : (
        <div className="session-note line" role="note">
          <span>
            {count(edits.length, 'edit')} on {fileName(served.path)}, kept in this browser; the file is as it
            was. Last: {edits.at(-1)}.
          </span>
          <Button
            look="small"
            onPress={() => void saveBack(fileName(served.path), studyText(workspace.study))}
          >
            Save back
          </Button>
        </div>
      )}
      {baseChanged ? (
        <div className="session-note line" role="alert">
          <span>The file on the disk has changed since these edits were made on it.</span>
          <Button look="small" onPress={() => settleBase('file')}>
            Take the file
          </Button>
          <Button look="small" onPress={() => settleBase('edits')}>
            Keep my edits
          </Button>
        </div>
      ) : null}
      {keeping.state === 'elsewhere' ? (
        <div className="session-note line" role="alert">
          <span>Another window has changed this study since; what is done here is not kept.</span>
          <Button look="small" onPress={() => location.reload()}>
            Show what the other window has
          </Button>
          <Button look="small" onPress={keeping.insist}>
            Keep what this window has
          </Button>
        </div>
      ) : keeping.beside ? (
        <p className="session-note" role="note">
          This study is open in another window of this browser too.
        </p>
      ) : null}
      {keeping.state === 'full' || keeping.state === 'refused' ? (
        <p className="session-note" role="alert">
          {keeping.state === 'full'
            ? 'The browser has no room left to keep this work.'
            : 'This browser keeps nothing, as in a private window.'}{' '}
          Save the study on Take away before you close it.
        </p>
      ) : null}
    </>
  );
}

function fileName(path: string): string {
  return path.slice(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
}
