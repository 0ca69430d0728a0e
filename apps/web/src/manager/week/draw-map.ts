import counties from 'virtual:county-outlines';
import {
  type GeoJSONSource,
  LngLatBounds,
  Map as MapLibreMap,
  Marker,
  NavigationControl,
  setWorkerUrl,
} from 'maplibre-gl';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import type { DayRoute, Shop, Site, Technician } from '../../data/types.js';
import { addStreets } from './street-tiles.js';
import style from './week.module.css';

setWorkerUrl(workerUrl);

export interface WeekMapHandle {
  readonly map: MapLibreMap;
  markers: Marker[];
  bounds: string;
  close(): void;
}

interface Drawn {
  readonly routes: readonly DayRoute[];
  readonly sites: readonly Site[];
  readonly technicians: readonly Technician[];
  readonly chosen: string | undefined;
  readonly onChoose: (visit: string | undefined) => void;
}

/** A map of county outlines, over the server's tiles where it has any. @throws where the browser has no WebGL */
export function openMap(
  container: HTMLElement,
  words: { zoomIn: string; zoomOut: string; map: string },
  tiles: Shop['mapTiles'],
): WeekMapHandle {
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
    locale: {
      'NavigationControl.ZoomIn': words.zoomIn,
      'NavigationControl.ZoomOut': words.zoomOut,
      'Map.Title': words.map,
    },
  });
  map.touchZoomRotate.disableRotation();
  if (tiles) map.once('load', () => void addStreets(map, tiles, colour));
  map.addControl(new NavigationControl({ showCompass: false }), 'top-right');
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
  return {
    map,
    markers: [],
    bounds: '',
    close() {
      seen.disconnect();
      byDark.removeEventListener('change', repaint);
      map.remove();
    },
  };
}

export function drawWeek(handle: WeekMapHandle, { routes, sites, technicians, chosen, onChoose }: Drawn): void {
  const siteOf = new Map(sites.map((site) => [site.id, site]));
  const baseOf = new Map(
    technicians.map((each) => [each.id, [each.baseLongitude, each.baseLatitude] as [number, number]]),
  );
  const bounds = new LngLatBounds();
  for (const marker of handle.markers) marker.remove();
  handle.markers = [];
  const lines = routes.map((route) => {
    const stops = route.visits.flatMap((visit, index) => {
      const site = siteOf.get(visit.siteId);
      if (!site) return [];
      const at: [number, number] = [site.longitude, site.latitude];
      handle.markers.push(
        numberMarker(index + 1, `${index + 1}. ${site.name}, ${route.technicianName}`, visit.id === chosen, () =>
          onChoose(visit.id),
        )
          .setLngLat(at)
          .addTo(handle.map),
      );
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
}

function numberMarker(order: number, label: string, isChosen: boolean, onPress: () => void): Marker {
  const element = document.createElement('button');
  element.type = 'button';
  element.className = style.marker!;
  element.textContent = String(order);
  element.title = label;
  element.setAttribute('aria-label', label);
  element.setAttribute('aria-pressed', String(isChosen));
  element.addEventListener('click', (event) => {
    event.stopPropagation();
    onPress();
  });
  return new Marker({ element });
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
