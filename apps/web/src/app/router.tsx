import { createRootRoute, createRoute, createRouter, lazyRouteComponent, redirect } from '@tanstack/react-router';
import { sessions } from '../data/session.js';
import { chargesSearch } from '../manager/charges/charges-search.js';
import { dueSearch } from '../manager/due/due-search.js';
import { readWeekAhead } from '../manager/week/read-ahead.js';
import { weekSearch } from '../manager/week/week-search.js';
import { Failed, NotFound } from './failed.js';
import { Landing } from './landing.js';
import { Shell } from './shell.js';
import { SignInPage } from './sign-in.js';

const root = createRootRoute({ notFoundComponent: NotFound, errorComponent: Failed });

const signIn = createRoute({
  getParentRoute: () => root,
  path: '/sign-in',
  component: SignInPage,
  validateSearch: (search): { to?: string } => (isOwnAddress(search.to) ? { to: search.to } : {}),
});

/** What the code of a label opens, in capitals or not; whoever is signed in is led on from there. */
const label = createRoute({
  getParentRoute: () => root,
  path: '/l/$labelId',
  component: lazyRouteComponent(() => import('../label/label-page.js'), 'LabelPage'),
  errorComponent: Failed,
});

/** Everything else is for people who are signed in. */
const inside = createRoute({
  getParentRoute: () => root,
  id: 'inside',
  component: Shell,
  errorComponent: Failed,
  beforeLoad: ({ location }) => {
    if (sessions.current().session === null)
      throw redirect({ to: '/sign-in', search: location.href === '/' ? {} : { to: location.href } });
  },
});

const page = <P extends string>(path: P, load: () => Promise<Record<string, unknown>>, name: string) =>
  createRoute({
    getParentRoute: () => inside,
    path,
    // biome-ignore lint/suspicious/noExplicitAny: the page's name is checked by every browser test that opens it
    component: lazyRouteComponent(load as () => Promise<any>, name),
    errorComponent: Failed,
  });

const week = createRoute({
  getParentRoute: () => inside,
  path: '/week',
  validateSearch: weekSearch,
  loaderDeps: ({ search }) => ({ of: search.of }),
  loader: ({ deps }) => readWeekAhead(deps.of),
  staleTime: Infinity, // the queries know how old their answers are
  component: lazyRouteComponent(() => import('../manager/week/week-page.js'), 'WeekPage'),
  errorComponent: Failed,
});
const charges = createRoute({
  getParentRoute: () => inside,
  path: '/charges',
  validateSearch: chargesSearch,
  component: lazyRouteComponent(() => import('../manager/charges/charges-page.js'), 'ChargesPage'),
  errorComponent: Failed,
});
const due = createRoute({
  getParentRoute: () => inside,
  path: '/due',
  validateSearch: dueSearch,
  component: lazyRouteComponent(() => import('../manager/due/due-page.js'), 'DuePage'),
  errorComponent: Failed,
});

const routes = root.addChildren([
  signIn,
  label,
  inside.addChildren([
    createRoute({
      getParentRoute: () => inside,
      path: '/',
      component: Landing,
      loader: () => readWeekAhead(undefined),
    }),
    week,
    due,
    charges,
    page('/charges/settings', () => import('../manager/charges/settings-page.js'), 'ChargeSettingsPage'),
    page('/charges/$id', () => import('../manager/charges/document-page.js'), 'DocumentPage'),
    page('/decisions', () => import('../manager/decisions/decisions-page.js'), 'DecisionsPage'),
    page('/orders', () => import('../manager/orders/orders-page.js'), 'OrdersPage'),
    page('/readings', () => import('../manager/readings/readings-page.js'), 'ReadingsPage'),
    page('/heard-from', () => import('../manager/heard-from/heard-from-page.js'), 'HeardFromPage'),
    page('/machines/$id/forecast', () => import('../manager/forecast/machine-forecast-page.js'), 'MachineForecastPage'),
    page('/forecasts', () => import('../manager/forecast/quality-page.js'), 'QualityPage'),
    page('/start', () => import('../manager/start/start-page.js'), 'StartPage'),
    page('/road-calls', () => import('../manager/road-call/road-call-page.js'), 'RoadCallPage'),
    page('/register', () => import('../manager/register/register-page.js'), 'RegisterPage'),
    page('/register/import', () => import('../manager/register/import-page.js'), 'ImportPage'),
    page('/register/connections', () => import('../manager/connections/connections-page.js'), 'ConnectionsPage'),
    page('/register/shop', () => import('../manager/register/shop-page.js'), 'ShopPage'),
    page('/register/$kind', () => import('../manager/register/register-page.js'), 'RegisterPage'),
    page('/register/$kind/$id', () => import('../manager/register/record-page.js'), 'RecordPage'),
    page('/looking-back', () => import('../manager/looking-back/looking-back-page.js'), 'LookingBackPage'),
    page(
      '/looking-back/machines/$id',
      () => import('../manager/looking-back/machine-record-page.js'),
      'MachineRecordPage',
    ),
    page('/day', () => import('../technician/day-page.js'), 'DayPage'),
    page('/day/$date', () => import('../technician/day-page.js'), 'DayPage'),
    page('/day/$date/$visitId', () => import('../technician/visit-page.js'), 'VisitPage'),
    page('/day/$date/$visitId/$machineId', () => import('../technician/machine-page.js'), 'MachinePage'),
    page('/unsent', () => import('../technician/unsent-page.js'), 'UnsentPage'),
    page('/grounds', () => import('../supervisor/grounds-page.js'), 'GroundsPage'),
    page('/grounds/$machineId', () => import('../supervisor/machine-page.js'), 'GroundsMachinePage'),
    page('/help', () => import('../help/help-page.js'), 'HelpPage'),
  ]),
]);

export const router = createRouter({
  routeTree: routes,
  defaultPreload: 'intent',
  scrollRestoration: true,
  defaultPendingMs: 200,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}

/** Only an address of this app may be returned to after signing in. */
function isOwnAddress(to: unknown): to is string {
  return typeof to === 'string' && /^\/(?![/\\])/.test(to);
}
