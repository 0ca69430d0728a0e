import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useShop } from '../../app/shop-words.js';
import { api, everyPage, queryOf } from '../../data/api.js';
import { useMachinesInUse } from '../../data/machines-in-use.js';
import { stored } from '../../data/stored.js';
import type { MachineLabel, MachineLabels } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { FileButton } from '../../design/file-button.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';

const FORMATS = ['letter-30', 'letter-10', 'a4-24'] as const;
interface Printer {
  readonly format: (typeof FORMATS)[number];
  readonly offsetX: string;
  readonly offsetY: string;
}
/** Paper and offsets belong to the printer of this device. */
const printer = stored<Printer>('deckround.label-printer');

const labelsQuery = (of: { readonly siteId?: string; readonly machineId?: string }) =>
  queryOptions({
    queryKey: ['machine-labels', of],
    queryFn: ({ signal }) =>
      everyPage<MachineLabel>(`/v1/machine-labels${queryOf({ ...of, revoked: 'false' })}`, signal),
  });

/** How many of a site's machines can be scanned, and the sheet for them. */
export function SiteLabels({ siteId }: { readonly siteId: string }) {
  const { t } = useWords();
  const machines = useMachinesInUse()?.filter((machine) => machine.siteId === siteId);
  const labels = useQuery(labelsQuery({ siteId })).data?.filter((label) =>
    machines?.some((machine) => machine.id === label.machineId),
  );
  const make = useMake({ siteId });
  if (!labels || !machines || machines.length === 0) return null;
  const missing = machines.length - labels.length;
  return (
    <section className="stack">
      <h2>{t('label.of-site', { labelled: labels.length, machines: machines.length })}</h2>
      {missing > 0 ? (
        <p>
          <button type="button" className="press-quiet" disabled={make.isPending} onClick={() => make.mutate()}>
            {t('label.make-missing', { n: missing })}
          </button>
        </p>
      ) : (
        <Sheet siteId={siteId} />
      )}
      <Failure error={make.error} />
    </section>
  );
}

/** The label of one machine: made, printed again, revoked. */
export function LabelOfMachine({ machineId, siteId }: { readonly machineId: string; readonly siteId: string }) {
  const { t, moment } = useWords();
  const client = useQueryClient();
  const labels = useQuery(labelsQuery({ machineId })).data;
  const make = useMake({ machineId });
  const revoke = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/machine-labels/${id}`),
    onSettled: () => client.invalidateQueries({ queryKey: ['machine-labels'] }),
  });
  if (!labels) return null;
  const label = labels[0];
  return (
    <section className="stack">
      <h2>{t('label.title')}</h2>
      {label ? (
        <>
          <p>{t('label.since', { day: moment(label.madeAt) })}</p>
          <Sheet siteId={siteId} machineId={machineId} />
          <p>
            <SureButton
              label={t('label.revoke')}
              sureLabel={t('label.revoke-sure')}
              isPending={revoke.isPending}
              onSure={() => revoke.mutate(label.id)}
            />
          </p>
        </>
      ) : (
        <>
          <p>{t('label.none')}</p>
          <p>
            <button type="button" className="press-quiet" disabled={make.isPending} onClick={() => make.mutate()}>
              {t('label.make')}
            </button>
          </p>
        </>
      )}
      <Failure error={make.error ?? revoke.error} />
    </section>
  );
}

function useMake(body: { readonly siteId: string } | { readonly machineId: string }) {
  const client = useQueryClient();
  const key = useRef(crypto.randomUUID());
  return useMutation({
    mutationFn: () => api.post<MachineLabels>('/v1/machine-labels', body, key.current),
    onSettled: () => {
      key.current = crypto.randomUUID();
      return client.invalidateQueries({ queryKey: ['machine-labels'] });
    },
  });
}

function Sheet({ siteId, machineId }: { readonly siteId: string; readonly machineId?: string }) {
  const { t } = useWords();
  const isMetric = useShop()?.units === 'metric';
  const [form, setForm] = useState<Printer>(
    printer.read() ?? { format: isMetric ? 'a4-24' : 'letter-30', offsetX: '0', offsetY: '0' },
  );
  const [start, setStart] = useState('1');
  const change = (part: Partial<Printer>) => {
    const next = { ...form, ...part };
    setForm(next);
    printer.write(next);
  };
  return (
    <>
      <div className="row">
        <label className="field">
          <span className="label">{t('label.paper')}</span>
          <select value={form.format} onChange={(event) => change({ format: event.target.value as Printer['format'] })}>
            {FORMATS.map((format) => (
              <option key={format} value={format}>
                {t(`label.${format}`)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('label.start')}</span>
          <input type="number" min={1} max={30} value={start} onChange={(event) => setStart(event.target.value)} />
        </label>
        <label className="field">
          <span className="label">{t('label.offset-x')}</span>
          <input
            type="number"
            step={0.5}
            value={form.offsetX}
            onChange={(event) => change({ offsetX: event.target.value })}
          />
        </label>
        <label className="field">
          <span className="label">{t('label.offset-y')}</span>
          <input
            type="number"
            step={0.5}
            value={form.offsetY}
            onChange={(event) => change({ offsetY: event.target.value })}
          />
        </label>
      </div>
      <FileButton path={`/v1/sites/${siteId}/label-sheet${queryOf({ ...form, start, machineId })}`}>
        {t(machineId === undefined ? 'label.print' : 'label.print-one')}
      </FileButton>
      <p className="pencil">{t('label.print-hint')}</p>
    </>
  );
}
