import type { QualityReport } from '../../../sources/quality/quality.ts';
import { percent } from '../../parts/numbers.ts';
import { Sort } from './quality-list.tsx';

/** How much of each attribute is recorded, and why the rest is not. */
export function Recorded({ filled }: { filled: QualityReport['filled'] }) {
  return (
    <Sort title="How much is recorded" count={filled.length}>
      <li>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">attribute</th>
              <th scope="col" className="number">
                filled
              </th>
              <th scope="col" className="number">
                not observed
              </th>
              <th scope="col" className="number">
                does not apply
              </th>
              <th scope="col" className="number">
                absent
              </th>
            </tr>
          </thead>
          <tbody>
            {filled.map((one) => (
              <tr key={one.attribute}>
                <th scope="row">{one.label}</th>
                <td className="number">{percent(one.rows === 0 ? 0 : one.filled / one.rows)}</td>
                <td className="number">{one.notObserved}</td>
                <td className="number">{one.notApplicable}</td>
                <td className="number">{one.absent}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </li>
    </Sort>
  );
}
