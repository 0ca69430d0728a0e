import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { api } from '../../data/api.js';
import type { RegisterPreview } from '../../data/types.js';
import { ChooseFiles } from '../../design/choose-files.js';
import { Failure } from '../../design/failure.js';
import { Scrolling } from '../../design/scrolling.js';
import { said } from '../../words/said.js';
import { useWords } from '../../words/words.js';
import style from './register.module.css';

const NAMES = [
  'customers.csv',
  'sites.csv',
  'machines.csv',
  'readings.csv',
  'meter_changes.csv',
  'service_history.csv',
  'technicians.csv',
  'parts.csv',
  'blackouts.csv',
  'machine_moves.csv',
  'weather.csv',
];

/** A register from CSV files: every fault is shown with its place, and what would change, before anything does. */
export function ImportPage() {
  const words = useWords();
  const { t, number, named } = words;
  const client = useQueryClient();
  const [files, setFiles] = useState<Readonly<Record<string, string>>>({});
  const [ignored, setIgnored] = useState<readonly string[]>([]);
  const check = useMutation({
    mutationFn: (body: Readonly<Record<string, string>>) =>
      api.post<RegisterPreview>('/v1/register-imports/check', { files: body }),
  });
  const apply = useMutation({
    mutationFn: () => api.post<RegisterPreview>('/v1/register-imports', { files }),
    onSuccess: () => client.invalidateQueries(),
  });

  async function take(chosen: readonly File[]) {
    const known = chosen.filter((file) => NAMES.includes(file.name));
    const read = await Promise.all(known.map(async (file) => [file.name, await file.text()] as const));
    const all = { ...files, ...Object.fromEntries(read) };
    setFiles(all);
    setIgnored(chosen.filter((file) => !NAMES.includes(file.name)).map((file) => file.name));
    apply.reset();
    check.mutate(all);
  }

  const seen = check.data;
  const error = check.error ?? apply.error;
  const changes = Object.entries(seen?.counts ?? {});
  const isNothing = changes.every(([, count]) => count.added + count.changed === 0);
  return (
    <div className="stack" style={{ maxWidth: '64rem' }}>
      <title>{t('import.page')}</title>
      <p>
        <Link to="/register">← {t('nav.register')}</Link>
      </p>
      <h1>
        {apply.data
          ? t('import.done')
          : seen === undefined
            ? t('import.title')
            : seen.faultCount > 0
              ? t('import.faults', { n: seen.faultCount })
              : t(isNothing ? 'import.same' : 'import.clean')}
      </h1>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the field inside takes the same files by keyboard */}
      <div
        className={style.drop}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          event.preventDefault();
          void take([...event.dataTransfer.files]);
        }}
      >
        <ChooseFiles
          label={t('import.choose')}
          accept=".csv,text/csv"
          multiple
          onChoose={(chosen) => void take(chosen)}
        />
        <p className="small pencil">{t('import.names', { names: NAMES.join(', ') })}</p>
        {Object.keys(files).length > 0 ? (
          <ul className="figure">
            {NAMES.filter((name) => files[name] !== undefined).map((name) => (
              <li key={name}>
                {name}
                {seen?.rows[name] === undefined ? null : ` · ${t('import.rows', { n: seen.rows[name] })}`}
              </li>
            ))}
          </ul>
        ) : null}
        {ignored.length > 0 ? <p className="note straw">{t('import.ignored', { names: ignored.join(', ') })}</p> : null}
      </div>
      {check.isPending ? <p role="status">{t('import.checking')}</p> : null}
      <Failure error={error} />
      {seen && seen.faultCount > 0 ? (
        <Scrolling label={t('import.fault-list')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('import.file')}</th>
                <th scope="col" className="number">
                  {t('import.line')}
                </th>
                <th scope="col">{t('import.column')}</th>
                <th scope="col">{t('import.what')}</th>
              </tr>
            </thead>
            <tbody>
              {seen.faults.map((fault) => (
                <tr key={`${fault.file}${fault.line}${fault.column}${fault.message}`}>
                  <th scope="row" className="figure">
                    {fault.file}
                  </th>
                  <td className="number" data-head={fault.line === 0 ? undefined : t('import.line')}>
                    {fault.line === 0 ? '' : number(fault.line)}
                  </td>
                  <td className="figure">{fault.column}</td>
                  <td data-whole>{said(fault.clause ?? undefined, fault.message, words, 'fault')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      ) : null}
      {changes.length > 0 ? (
        <>
          <table>
            <thead>
              <tr>
                <th scope="col">{t('import.kind')}</th>
                <th scope="col" className="number">
                  {t('import.added')}
                </th>
                <th scope="col" className="number">
                  {t('import.changed')}
                </th>
                <th scope="col" className="number">
                  {t('import.unchanged')}
                </th>
              </tr>
            </thead>
            <tbody>
              {changes.map(([name, count]) => (
                <tr key={name}>
                  <th scope="row">{named(`kind.${name}`, name)}</th>
                  <td className="number">{number(count.added)}</td>
                  <td className="number">{number(count.changed)}</td>
                  <td className="number">{number(count.unchanged)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {seen?.readingsSetAside ? <p>{t('import.set-aside', { n: seen.readingsSetAside })}</p> : null}
          {apply.data ? (
            <Link className="press" to="/week">
              {t('start.plan')}
            </Link>
          ) : (
            <button
              type="button"
              className="press"
              style={{ justifySelf: 'start' }}
              disabled={apply.isPending || isNothing}
              onClick={() => apply.mutate()}
            >
              {t('import.apply')}
            </button>
          )}
        </>
      ) : null}
    </div>
  );
}
