import 'maplibre-gl/dist/maplibre-gl.css';
import { useEffect, useRef, useState } from 'react';
import { useShop } from '../../app/shop-words.js';
import type { Site, Technician, Week } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { drawWeek, openMap, type WeekMapHandle } from './draw-map.js';
import style from './week.module.css';

interface Props {
  readonly week: Week;
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string | undefined) => void;
}

/** Where the visits are, with the same numbers as on the strips; one day at a time, or the week. */
export function MapOfWeek({ week, sites, technicians, chosen, onChoose }: Props) {
  const { t, weekday } = useWords();
  const tiles = useShop()?.mapTiles ?? null;
  const days = [...new Set(week.routes.map((route) => route.date))];
  const chosenDay = week.routes.find((route) => route.visits.some((visit) => visit.id === chosen))?.date;
  const [picked, setPicked] = useState<string | null>(null);
  const shownDay = chosenDay ?? picked;
  const box = useRef<HTMLDivElement>(null);
  const [map, setMap] = useState<WeekMapHandle | null>(null);
  const [broken, setBroken] = useState(false);
  const [near, setNear] = useState<readonly string[]>([]);
  const choose = useRef(onChoose);
  choose.current = onChoose;

  useEffect(() => {
    let handle: WeekMapHandle | undefined;
    try {
      handle = openMap(box.current!, t('map.label'), tiles);
      setMap(handle);
    } catch {
      setBroken(true);
    }
    return () => {
      setMap(null);
      handle?.close();
    };
  }, [t, tiles]);

  useEffect(() => {
    if (map === null) return;
    const routes = week.routes.filter((route) => shownDay === null || route.date === shownDay);
    drawWeek(map, {
      ...{ routes, sites, technicians, chosen },
      onChoose: (id) => choose.current(id),
      onGather: setNear,
      gathered: (n) => t('map.several', { n }),
    });
  }, [map, week, sites, technicians, chosen, shownDay, t]);
  // What stands close together on one day may not on another.
  useEffect(() => setNear([]), [week, shownDay]);

  return (
    <figure className={style.mapBox}>
      {broken ? <p className="note">{t('map.broken')}</p> : <div ref={box} className={style.map} />}
      {near.length > 0 ? <NearVisits near={near} week={week} sites={sites} onChoose={onChoose} /> : null}
      <figcaption className="row">
        <label className="small">
          {t('map.shows')}{' '}
          <select
            className={style.choice}
            value={shownDay ?? ''}
            onChange={(event) => setPicked(event.target.value || null)}
            disabled={chosenDay !== undefined}
          >
            <option value="">{t('map.whole-week')}</option>
            {days.map((date) => (
              <option key={date} value={date}>
                {weekday(date)}
              </option>
            ))}
          </select>
        </label>
        {map === null ? null : (
          <span className="row">
            <button type="button" className="press-quiet" aria-label={t('map.in')} onClick={() => map.map.zoomIn()}>
              +
            </button>
            <button type="button" className="press-quiet" aria-label={t('map.out')} onClick={() => map.map.zoomOut()}>
              −
            </button>
          </span>
        )}
        <span className="small pencil">{[t('map.source'), tiles?.credit].filter(Boolean).join(' · ')}</span>
      </figcaption>
    </figure>
  );
}

/** The visits that one mark stands for, to choose from. */
function NearVisits({
  near,
  week,
  sites,
  onChoose,
}: { readonly near: readonly string[] } & Omit<Props, 'technicians' | 'chosen'>) {
  const { t, weekday } = useWords();
  const list = useRef<HTMLUListElement>(null);
  // The hand or the keyboard goes on where the mark has led.
  useEffect(() => list.current?.querySelector('button')?.focus(), [near]);
  const rows = week.routes.flatMap(({ visits, technicianName, date }) =>
    visits.flatMap((visit, index) =>
      near.includes(visit.id) ? [{ visit, technicianName, date, order: index + 1 }] : [],
    ),
  );
  return (
    <ul ref={list} className={style.near} aria-label={t('map.near')}>
      {rows.map(({ visit, technicianName, date, order }) => (
        <li key={visit.id}>
          <button type="button" className="press-plain" onClick={() => onChoose(visit.id)}>
            {order}. {sites.find((site) => site.id === visit.siteId)?.name}, {technicianName}, {weekday(date)}
          </button>
        </li>
      ))}
    </ul>
  );
}
