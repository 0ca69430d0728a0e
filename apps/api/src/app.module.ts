import type { JobQueue } from '@deckround/jobs';
import type { Clock, Config, Logger } from '@deckround/platform';
import type { Store } from '@deckround/store';
import { type DynamicModule, Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { AccessController } from './access/access.controller.js';
import { AccessGuard } from './access/access.guard.js';
import { AccessService } from './access/access.service.js';
import { IdentifyGuard } from './access/identify.guard.js';
import { PeopleController } from './access/people.controller.js';
import { AccountingController } from './accounting/accounting.controller.js';
import { AuditController } from './audit/audit.controller.js';
import { CalendarAddressesController } from './calendars/calendar-addresses.controller.js';
import { CalendarFeedController } from './calendars/calendar-feed.controller.js';
import { ChargeDocumentsController } from './charges/documents.controller.js';
import { ChargeSettingsController } from './charges/settings.controller.js';
import { DemoShopController } from './demo/demo-shop.controller.js';
import { FieldDayController } from './field-day/field-day.controller.js';
import { FieldRecordsController } from './field-day/field-records.controller.js';
import { PartsTakenBackController } from './field-day/parts-taken-back.controller.js';
import { PhotosController } from './field-day/photos.controller.js';
import { PartUsesController, WorkTimesController } from './field-day/visit-facts.js';
import { FIELD_WORK_CONTROLLERS } from './field-work/field-work.js';
import { ReadingsController } from './field-work/readings.controller.js';
import { StopgapDecisionsController } from './field-work/stopgap-decisions.controller.js';
import { Once } from './http/once.js';
import { CLOCK, CONFIG, LOGGER, QUEUE, RATE_LIMITER, STORE } from './http/tokens.js';
import { LabelsController } from './labels/labels.controller.js';
import { MachineLabelsController } from './labels/machine-labels.controller.js';
import { NoticesController } from './notices/notices.controller.js';
import { SiteContactsController } from './notices/site-contacts.js';
import { PapersController } from './paper/papers.controller.js';
import { DueController } from './planning/due.controller.js';
import { ForecastQualityController } from './planning/forecast-quality.controller.js';
import { ForecastQualityService } from './planning/forecast-quality.service.js';
import { PlansController } from './planning/plans.controller.js';
import { VisitAnswersController } from './planning/visit-answers.controller.js';
import { VisitsController } from './planning/visits.controller.js';
import { WeekController } from './planning/week.controller.js';
import { RateLimitGuard } from './rate-limits/rate-limit.guard.js';
import type { RateLimiter } from './rate-limits/rate-limiter.js';
import { AgreementsController } from './register/agreements.js';
import { CustomersController } from './register/customers.js';
import { DeliveriesController } from './register/deliveries.controller.js';
import { ImportController } from './register/import.controller.js';
import { MACHINE_DETAIL_CONTROLLERS } from './register/machine-details.js';
import { MachineClassesController, MachinesController } from './register/machines.js';
import { MachineMovesController, WeatherController } from './register/moves-and-weather.js';
import { PartOrdersController } from './register/part-orders.js';
import { PartsController } from './register/parts.js';
import { ServiceItemsController } from './register/service-items.js';
import { ShopController } from './register/shop.controller.js';
import { BlackoutsController, SitesController } from './register/sites.js';
import { AbsencesController, TechniciansController } from './register/technicians.js';
import { TravelController } from './register/travel.controller.js';
import { BearingsController } from './reliability/bearings.controller.js';
import { FailureCausesController } from './reliability/failure-causes.js';
import { LivesController } from './reliability/lives.controller.js';
import { MachineRecordsController } from './reliability/machines.controller.js';
import { ProposalsController } from './reliability/proposals.controller.js';
import { ShopLives } from './reliability/shop-lives.js';
import { HealthController } from './system/health.controller.js';
import { SnapshotsController } from './telematics/snapshots.controller.js';
import { TelematicsSourcesController } from './telematics/sources.controller.js';
import { TelematicsUnitsController } from './telematics/units.controller.js';
import { WebhooksController } from './webhooks/webhooks.controller.js';
import { SiteEventsController, VisitBarsController } from './week-changes/bars-and-events.js';
import { MovesController } from './week-changes/moves.controller.js';
import { RoadCallAnswersController } from './week-changes/road-calls.controller.js';
import { SuppliesController } from './week-changes/supplies.controller.js';

/** What the API stands on; made by whoever starts it. */
export interface ApiContext {
  readonly config: Config;
  readonly store: Store;
  readonly queue: JobQueue;
  readonly clock: Clock;
  readonly logger: Logger;
  readonly limiter: RateLimiter;
}

@Module({})
// biome-ignore lint/complexity/noStaticOnlyClass: Nest wants a class to hang the module on
export class AppModule {
  static for(context: ApiContext): DynamicModule {
    return {
      module: AppModule,
      controllers: [
        HealthController,
        AccessController,
        PeopleController,
        ShopController,
        DemoShopController,
        CustomersController,
        SitesController,
        BlackoutsController,
        MachineClassesController,
        MachinesController,
        ServiceItemsController,
        ImportController,
        ...MACHINE_DETAIL_CONTROLLERS,
        TechniciansController,
        AbsencesController,
        MachineMovesController,
        TravelController,
        WeatherController,
        PartsController,
        PartOrdersController,
        DeliveriesController,
        PartsTakenBackController,
        AgreementsController,
        ReadingsController,
        MachineLabelsController,
        LabelsController,
        ...FIELD_WORK_CONTROLLERS,
        StopgapDecisionsController,
        FieldDayController,
        PapersController,
        FieldRecordsController,
        PartUsesController,
        WorkTimesController,
        PhotosController,
        DueController,
        ForecastQualityController,
        LivesController,
        BearingsController,
        MachineRecordsController,
        ProposalsController,
        FailureCausesController,
        PlansController,
        WeekController,
        VisitsController,
        VisitAnswersController,
        MovesController,
        RoadCallAnswersController,
        VisitBarsController,
        SiteEventsController,
        SuppliesController,
        ChargeSettingsController,
        ChargeDocumentsController,
        AccountingController,
        AuditController,
        WebhooksController,
        CalendarAddressesController,
        CalendarFeedController,
        SiteContactsController,
        NoticesController,
        SnapshotsController,
        TelematicsUnitsController,
        TelematicsSourcesController,
      ],
      providers: [
        { provide: STORE, useValue: context.store },
        { provide: QUEUE, useValue: context.queue },
        { provide: CONFIG, useValue: context.config },
        { provide: CLOCK, useValue: context.clock },
        { provide: LOGGER, useValue: context.logger },
        { provide: RATE_LIMITER, useValue: context.limiter },
        // In this order: who calls, how often, whether this is allowed.
        { provide: APP_GUARD, useClass: IdentifyGuard },
        { provide: APP_GUARD, useClass: RateLimitGuard },
        { provide: APP_GUARD, useClass: AccessGuard },
        AccessService,
        ForecastQualityService,
        ShopLives,
        Once,
      ],
    };
  }
}
