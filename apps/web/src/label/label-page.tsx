import { useQuery } from '@tanstack/react-query';
import { Link, Navigate, useParams } from '@tanstack/react-router';
import { describeFailure } from '../app/failed.js';
import { LookMenu } from '../app/look-menu.js';
import { Away, api } from '../data/api.js';
import { useSession } from '../data/session.js';
import type { FieldDay, LabelledMachine, MachineLabel } from '../data/types.js';
import { EnterHours } from '../design/enter-hours.js';
import { useWords } from '../words/words.js';
import style from './label.module.css';

/** What a label opens: the machine itself for those who may see it, its hour meter for everybody else. */
export function LabelPage() {
  const { labelId } = useParams({ from: '/l/$labelId' });
  const { session, ended } = useSession();
  const isIn = session !== null && !ended;
  const place = useQuery({
    queryKey: ['label-place', labelId, session?.person.id],
    queryFn: () => placeFor(labelId, session!.person.role),
    enabled: isIn,
    retry: false,
  });
  if (isIn && place.isPending) return null;
  return place.data ? <Navigate {...place.data} replace /> : <HoursByLabel labelId={labelId} />;
}

/** Where the machine is shown to this role; undefined = nowhere. */
async function placeFor(labelId: string, role: 'manager' | 'technician' | 'supervisor') {
  const { machineId } = await api.get<MachineLabel>(`/v1/machine-labels/${labelId}`);
  if (role === 'supervisor') return { to: '/grounds/$machineId', params: { machineId } } as const;
  if (role === 'manager') return { to: '/register/$kind/$id', params: { kind: 'machines', id: machineId } } as const;
  const { date, visits } = await api.get<FieldDay>('/v1/field-day');
  const visit = visits.find((each) => each.machines.some((machine) => machine.id === machineId));
  if (visit === undefined) return null;
  return { to: '/day/$date/$visitId/$machineId', params: { date, visitId: visit.id, machineId } } as const;
}

function HoursByLabel({ labelId }: { readonly labelId: string }) {
  const words = useWords();
  const { t } = words;
  const { data, error, refetch } = useQuery({
    queryKey: ['label', labelId],
    queryFn: () => api.get<LabelledMachine>(`/v1/labels/${labelId}`),
  });
  const isAway = error instanceof Away;
  return (
    <main className={style.page}>
      <p className={style.mark}>Deckround</p>
      {data ? (
        <>
          <title>{t('label.page', { machine: data.machineCode })}</title>
          <div className="tight">
            <h1>{t('label.question', { machine: data.machineCode })}</h1>
            <p className="pencil">{data.machineName}</p>
          </div>
          <EnterHours
            last={data.lastReading}
            save={async ({ hours }, key) => {
              // Who scans a label need not be of the shop: the world's clock counts.
              await api.post(`/v1/labels/${labelId}/readings`, { hours, readAt: new Date().toISOString() }, key);
              await refetch();
            }}
          />
          <p className="pencil">{t('label.what')}</p>
        </>
      ) : error ? (
        <div className="stack" role="alert">
          <h1>{t(isAway ? 'failed.title' : 'label.gone')}</h1>
          <p>{describeFailure(error, words)}</p>
          {isAway ? (
            <button type="button" className="press" onClick={() => void refetch()}>
              {t('failed.again')}
            </button>
          ) : null}
        </div>
      ) : (
        <h1>{t('wait')}</h1>
      )}
      <p>
        <Link to="/sign-in" search={{}}>
          {t('sign-in.title')}
        </Link>
      </p>
      <LookMenu />
    </main>
  );
}
