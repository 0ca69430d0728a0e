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
  const choose = useRef(onChoose);
  choose.current = onChoose;

  useEffect(() => {
    let handle: WeekMapHandle | undefined;
    try {
      handle = openMap(box.current!, { zoomIn: t('map.in'), zoomOut: t('map.out'), map: t('map.label') }, tiles);
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
    drawWeek(map, { routes, sites, technicians, chosen, onChoose: (id) => choose.current(id) });
  }, [map, week, sites, technicians, chosen, shownDay]);

  return (
    <figure className={style.mapBox}>
      {broken ? <p className="note">{t('map.broken')}</p> : <div ref={box} className={style.map} />}
      <figcaption className="row">
        <label className="small">
          {t('map.shows')}{' '}
          <select
            className={style.seconds}
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
        <span className="small pencil">{[t('map.source'), tiles?.credit].filter(Boolean).join(' · ')}</span>
      </figcaption>
    </figure>
  );
}
