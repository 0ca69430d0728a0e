import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { Visit } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { BarsOfSite } from './bars-of-site.js';

/** Moves the visit, holds it fast against planning again, or bars the site to this technician or this day. */
export function HoldAndBar({ visit, onMove }: { readonly visit: Visit; readonly onMove: () => void }) {
  const { t, day } = useWords();
  const client = useQueryClient();
  const pin = useMutation({
    mutationFn: () => api.patch(`/v1/visits/${visit.id}`, { pinned: !visit.pinned }, visit.version),
    onSettled: () => client.invalidateQueries(),
  });
  const bar = useMutation({
    mutationFn: (body: { technicianId: string } | { date: string }) =>
      api.post('/v1/visit-bars', { siteId: visit.siteId, ...body }),
    onSettled: () => client.invalidateQueries(),
  });
  const error = pin.error ?? bar.error;
  return (
    <div className="tight">
      <div className="row">
        <button type="button" className="press-quiet" onClick={onMove}>
          {t('move.start')} <kbd>M</kbd>
        </button>
        <label className="check">
          <input type="checkbox" checked={visit.pinned} disabled={pin.isPending} onChange={() => pin.mutate()} />
          {t('visit.pinned')}
        </label>
      </div>
      <div className="row">
        <button type="button" className="press-plain" onClick={() => bar.mutate({ date: visit.date })}>
          {t('bar.day', { day: day(visit.date) })}
        </button>
        <button type="button" className="press-plain" onClick={() => bar.mutate({ technicianId: visit.technicianId })}>
          {t('bar.technician')}
        </button>
      </div>
      {bar.isSuccess ? <p role="status">{t('bar.done')}</p> : null}
      <BarsOfSite siteId={visit.siteId} />
      <Failure error={error} />
    </div>
  );
}
