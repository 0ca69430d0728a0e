import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { api, everyPage, queryOf } from '../../data/api.js';
import { techniciansQuery } from '../../data/queries.js';
import type { VisitBar } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

export const barsQuery = (siteId: string) =>
  queryOptions({
    queryKey: ['visit-bars', siteId],
    queryFn: ({ signal }) => everyPage<VisitBar>(`/v1/visit-bars${queryOf({ siteId })}`, signal),
  });

/** What planning again must not do at this site, each to be taken back. */
export function BarsOfSite({ siteId }: { readonly siteId: string }) {
  const { t, day } = useWords();
  const client = useQueryClient();
  const bars = useQuery(barsQuery(siteId)).data ?? [];
  const technicians = useQuery(techniciansQuery).data ?? [];
  const lift = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/visit-bars/${id}`),
    onSettled: () => client.invalidateQueries(),
  });
  if (bars.length === 0) return null;
  const nameOf = (id: string) => technicians.find((each) => each.id === id)?.name ?? t('unknown');
  return (
    <div className="tight">
      <p className="small pencil">{t('bar.standing')}</p>
      <ul>
        {bars.map(({ id, technicianId, date, reason }) => {
          const what = [
            date === null ? '' : t('bar.day', { day: day(date) }),
            technicianId === null ? '' : t('bar.with', { name: nameOf(technicianId) }),
          ]
            .filter(Boolean)
            .join(', ');
          return (
            <li key={id}>
              {what} {reason ? <span className="pencil">{reason}</span> : null}{' '}
              <button
                type="button"
                className="press-plain"
                aria-label={t('bar.lift-what', { what })}
                disabled={lift.isPending}
                onClick={() => lift.mutate(id)}
              >
                {t('bar.lift')}
              </button>
            </li>
          );
        })}
      </ul>
      <Failure error={lift.error} />
    </div>
  );
}
