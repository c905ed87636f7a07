import type { ClaimVerdict } from '../../../analyses/claims/found.ts';

/** Shape first, colour second: each verdict is told by its mark alone, and always has its word beside it. */
export function VerdictMark({ verdict }: { verdict: ClaimVerdict | null }) {
  return (
    <svg className="verdict-mark" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      {MARKS[verdict ?? 'unread']}
    </svg>
  );
}

const MARKS: Readonly<Record<ClaimVerdict | 'unread', React.ReactNode>> = {
  agrees: <circle cx="8" cy="8" r="5" fill="var(--fibre)" stroke="var(--ink)" />,
  'agrees only if rounded': (
    <>
      <circle cx="8" cy="8" r="5" fill="none" stroke="var(--ink)" />
      <path d="M8 3a5 5 0 0 0 0 10z" fill="var(--fibre)" />
    </>
  ),
  differs: <path d="M8 2 14 8 8 14 2 8Z" fill="var(--copper)" stroke="var(--ink)" />,
  'cannot be': <path d="M3 3 13 13M13 3 3 13" stroke="var(--madder)" strokeWidth="3" />,
  'cannot be checked': (
    <circle cx="8" cy="8" r="5" fill="none" stroke="var(--ink-soft)" strokeDasharray="2.5 2" />
  ),
  unread: <path d="M3 8H13" stroke="var(--ink-soft)" strokeWidth="1.5" strokeDasharray="2.5 2" />,
};
