import counties from 'virtual:county-outlines';
import { type GeoJSONSource, LngLatBounds, Map as MapLibreMap, Marker, setWorkerUrl } from 'maplibre-gl';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import type { DayRoute, Shop, Site, Technician } from '../../data/types.js';
import { spotGroups } from './spot-groups.js';
import { addStreets } from './street-tiles.js';
import style from './week.module.css';

setWorkerUrl(workerUrl);

/** Marks nearer to each other than this are drawn as one, pixels. */
const APART = 40;

export interface WeekMapHandle {
  readonly map: MapLibreMap;
  marks: readonly Mark[];
  markers: readonly Marker[];
  bounds: string;
  /** Draws the marks anew, as they stand apart at this distance. */
  place(): void;
  close(): void;
}

/** A visit on the map. */
interface Mark {
  readonly at: [number, number];
  readonly visitId: string;
  readonly order: number;
  readonly label: string;
}

interface Drawn {
  readonly routes: readonly DayRoute[];
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string) => void;
  /** Several visits stand too close together to be told apart. */
  readonly onGather: (visits: readonly string[]) => void;
  /** What a mark for several visits is called. */
  readonly gathered: (visits: number) => string;
}

/** A map of county outlines, over the server's tiles where it has any. @throws where the browser has no WebGL */
export function openMap(container: HTMLElement, title: string, tiles: Shop['mapTiles']): WeekMapHandle {
  const map = new MapLibreMap({
    container,
    style: {
      version: 8,
      sources: {
        counties: { type: 'geojson', data: counties },
        drives: { type: 'geojson', data: { type: 'FeatureCollection', features: [] } },
      },
      layers: [
        {
          id: 'county',
          type: 'line',
          source: 'counties',
          filter: ['==', 'kind', 'county'],
          paint: { 'line-color': colour('--rule'), 'line-width': 1 },
        },
        {
          id: 'state',
          type: 'line',
          source: 'counties',
          filter: ['==', 'kind', 'state'],
          paint: { 'line-color': colour('--edge'), 'line-width': 1.5 },
        },
        {
          id: 'drives',
          type: 'line',
          source: 'drives',
          paint: { 'line-color': colour('--ink'), 'line-width': 1.5, 'line-opacity': 0.7 },
        },
      ],
    },
    center: [-93.6, 41.6],
    zoom: 8,
    attributionControl: false,
    dragRotate: false,
    pitchWithRotate: false,
    locale: { 'Map.Title': title },
  });
  map.touchZoomRotate.disableRotation();
  if (tiles) map.once('load', () => void addStreets(map, tiles, colour));
  const repaint = () => {
    if (!map.isStyleLoaded()) return;
    map.setPaintProperty('county', 'line-color', colour('--rule'));
    map.setPaintProperty('state', 'line-color', colour('--edge'));
    map.setPaintProperty('drives', 'line-color', colour('--ink'));
  };
  const seen = new MutationObserver(repaint);
  seen.observe(document.documentElement, { attributes: true, attributeFilter: ['data-light'] });
  const byDark = matchMedia('(prefers-color-scheme: dark)');
  byDark.addEventListener('change', repaint);
  const handle: WeekMapHandle = {
    map,
    marks: [],
    markers: [],
    bounds: '',
    place: () => undefined,
    close() {
      seen.disconnect();
      byDark.removeEventListener('change', repaint);
      map.remove();
    },
  };
  map.on('zoomend', () => handle.place());
  return handle;
}

export function drawWeek(handle: WeekMapHandle, drawn: Drawn): void {
  const { routes, sites, technicians } = drawn;
  const siteOf = new Map(sites.map((site) => [site.id, site]));
  const baseOf = new Map(
    technicians.map((each) => [each.id, [each.baseLongitude, each.baseLatitude] as [number, number]]),
  );
  const bounds = new LngLatBounds();
  const marks: Mark[] = [];
  const lines = routes.map((route) => {
    const stops = route.visits.flatMap((visit, index) => {
      const site = siteOf.get(visit.siteId);
      if (!site) return [];
      const at: [number, number] = [site.longitude, site.latitude];
      const order = index + 1;
      marks.push({ at, visitId: visit.id, order, label: `${order}. ${site.name}, ${route.technicianName}` });
      return [at];
    });
    const base = baseOf.get(route.technicianId);
    const line = base ? [base, ...stops, base] : stops;
    for (const at of line) bounds.extend(at);
    return line;
  });
  const show = () => {
    (handle.map.getSource('drives') as GeoJSONSource | undefined)?.setData({
      type: 'FeatureCollection',
      features: lines.map((coordinates) => ({
        type: 'Feature',
        properties: {},
        geometry: { type: 'LineString', coordinates },
      })),
    });
  };
  if (handle.map.isStyleLoaded()) show();
  else handle.map.once('load', show);
  const wanted = bounds.isEmpty() ? '' : bounds.toString();
  if (wanted !== '' && wanted !== handle.bounds) {
    handle.bounds = wanted;
    handle.map.fitBounds(bounds, { padding: 36, animate: false, maxZoom: 12 });
  }
  handle.marks = marks;
  handle.place = () => placeMarks(handle, drawn);
  handle.place();
}

/** One mark for each visit, or one for all that would lie over each other. */
function placeMarks(handle: WeekMapHandle, { chosen, onChoose, onGather, gathered }: Drawn): void {
  const { map, marks } = handle;
  for (const marker of handle.markers) marker.remove();
  const spots = marks.map(({ at }) => map.project(at));
  handle.markers = spotGroups(spots, APART).map((members) => {
    const those = members.map((index) => marks[index]!);
    const [first] = those;
    const element = document.createElement('button');
    element.type = 'button';
    element.className = style.marker!;
    element.title = those.length === 1 ? first!.label : gathered(those.length);
    element.setAttribute('aria-label', element.title);
    element.setAttribute('aria-pressed', String(those.some(({ visitId }) => visitId === chosen)));
    element.textContent = those.length === 1 ? String(first!.order) : `${those.length}×`;
    element.dataset.several = String(those.length > 1);
    element.addEventListener('click', (event) => {
      event.stopPropagation();
      if (those.length === 1) onChoose(first!.visitId);
      else onGather(those.map(({ visitId }) => visitId));
    });
    const mean = (axis: 0 | 1) => those.reduce((sum, { at }) => sum + at[axis], 0) / those.length;
    return new Marker({ element }).setLngLat([mean(0), mean(1)]).addTo(map);
  });
}

/** A colour of the page, as the map can read it: `light-dark()` resolved. */
function colour(name: string): string {
  const probe = document.createElement('i');
  probe.style.color = `var(${name})`;
  document.body.append(probe);
  const found = getComputedStyle(probe).color;
  probe.remove();
  return found;
}
