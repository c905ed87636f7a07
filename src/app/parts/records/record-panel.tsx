import { useEffect, useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { RecordView } from '../../engine/views/records.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { StructureSchema } from '../pictures/structure-schema.tsx';

/** What the fragments of a record are called: their composed kinds, each once. */
function kindsOf({ fragments }: RecordView): readonly string[] {
  const cells = fragments.flatMap(({ cells: all }) => all.filter(({ attribute }) => attribute === 'kind'));
  return [...new Set(cells.map(({ readAs }) => readAs))].filter((kind) => kind !== '');
}

/** The way from a point back to its cells: what the record is, and the lines of the files behind it. */
export function RecordPanel({ id }: { id: string }) {
  const record = useRecord(id);
  if (record === null) return <p className="soft small">Looking up {id}.</p>;
  const several = record.fragments.length > 1;
  return (
    <div className="stack record">
      <div>
        <h3>{record.id}</h3>
        {kindsOf(record).length === 0 ? null : <p className="small">{kindsOf(record).join('; ')}</p>}
        <p className="small soft">
          {record.assemblage === '' ? 'site not recorded' : record.assemblage}
          {several ? `; ${record.fragments.length} fragments of one item` : ''}
        </p>
      </div>
      {record.fragments.map((fragment) => (
        <div key={fragment.id} className="stack tight">
          {several ? <h4 className="small fragment-name">{fragment.id}</h4> : null}
          <table className="table cells">
            <caption className="hidden-text">Cells of {fragment.id}</caption>
            <thead className="hidden-text">
              <tr>
                <th scope="col">Attribute</th>
                <th scope="col">Read as</th>
                <th scope="col">In the file</th>
              </tr>
            </thead>
            <tbody>
              {fragment.cells.map((cell) => (
                <tr key={cell.attribute}>
                  <th scope="row">{cell.label}</th>
                  <td>
                    {cell.readAs === '' ? (
                      <span className="why">{cell.state.replace('-', ' ')}</span>
                    ) : (
                      cell.readAs
                    )}
                  </td>
                  <td className="soft">
                    {cell.raw === '' ? null : <span className="quoted">{cell.raw}</span>}
                    {cell.from === undefined ? null : (
                      <span className="small">
                        {cell.raw === '' ? '' : '; '}
                        {cell.from}
                      </span>
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          {fragment.drawing === null ? null : (
            <StructureSchema drawing={fragment.drawing} of="the fragment" />
          )}
          <Disclosure>
            <Heading level={5} className="plain-head">
              <AriaButton slot="trigger" className="button plain small">
                {fragment.source}, row {fragment.row}
              </AriaButton>
            </Heading>
            <DisclosurePanel>
              <dl className="source-line">
                {fragment.line.map(({ header, text }) => (
                  <div key={header}>
                    <dt>{header}</dt>
                    <dd className="quoted">{text}</dd>
                  </div>
                ))}
              </dl>
            </DisclosurePanel>
          </Disclosure>
        </div>
      ))}
    </div>
  );
}

function useRecord(id: string): RecordView | null {
  const { engine, workspace, view } = useWorkbench();
  const [record, setRecord] = useState<RecordView | null>(null);
  const { study } = workspace;
  // The view says when the material has changed
  useEffect(() => {
    let current = true;
    engine
      .ask((remote) => remote.record(study, id) as Promise<RecordView | null>)
      .then(
        (found) => current && setRecord(found),
        () => undefined,
      );
    return () => {
      current = false;
    };
  }, [engine, view, id]);
  return record?.id === id ? record : null;
}
