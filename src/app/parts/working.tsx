import { ProgressBar } from 'react-aria-components';
import { Button } from './controls.tsx';

export interface WorkingProps {
  readonly share: number;
  readonly what: string;
  readonly onStop?: () => void;
}

/** A run that takes its time: how far it is, and a way to end it. */
export function Working({ share, what, onStop }: WorkingProps) {
  return (
    <div className="working" role="status">
      <ProgressBar aria-label={what} value={share * 100}>
        <div className="bar">
          <span style={{ width: `${Math.max(2, share * 100)}%` }} />
        </div>
      </ProgressBar>
      <span>{what}</span>
      {onStop === undefined ? null : (
        <Button look="small" onPress={onStop}>
          Stop
        </Button>
      )}
    </div>
  );
}
