import type * as wire from '@deckround/contracts';
import type { z } from 'zod';

export type Session = z.infer<typeof wire.SignedIn>;
export type Role = z.infer<typeof wire.Role>;
export type Shop = z.infer<typeof wire.Shop>;
export type Problem = z.infer<typeof wire.Problem>;

export type Week = z.infer<typeof wire.Week>;
export type LeftOutItem = z.infer<typeof wire.LeftOutItem>;
export type DayRoute = z.infer<typeof wire.DayRoute>;
export type Visit = z.infer<typeof wire.Visit>;
export type VisitItem = z.infer<typeof wire.VisitItem>;
export type PlanRun = z.infer<typeof wire.PlanRun>;
export type ForecastRun = z.infer<typeof wire.ForecastRun>;
export type DueItem = z.infer<typeof wire.DueItem>;
export type DueSummary = z.infer<typeof wire.DueSummary>;
export type UsageForecast = z.infer<typeof wire.UsageForecast>;
export type ForecastQuality = z.infer<typeof wire.ForecastQuality>;
export type Reading = z.infer<typeof wire.Reading>;
export type MovePrices = z.infer<typeof wire.MovePrices>;
export type VisitChange = z.infer<typeof wire.VisitChange>;
export type VisitMoved = z.infer<typeof wire.VisitMoved>;
export type Absence = z.infer<typeof wire.Absence>;
export type Symptom = z.infer<typeof wire.Symptom>;
export type RoadCallOptions = z.infer<typeof wire.RoadCallOptions>;
export type RoadCall = z.infer<typeof wire.RoadCall>;

export type RegisterPreview = z.infer<typeof wire.RegisterPreview>;
export type Customer = z.infer<typeof wire.Customer>;
export type Site = z.infer<typeof wire.Site>;
export type Machine = z.infer<typeof wire.Machine>;
export type MachineClass = z.infer<typeof wire.MachineClass>;
export type ServiceItem = z.infer<typeof wire.ServiceItem>;
export type Technician = z.infer<typeof wire.Technician>;
export type Part = z.infer<typeof wire.Part>;
export type PartOrder = z.infer<typeof wire.PartOrder>;
export type Agreement = z.infer<typeof wire.Agreement>;
export type ComponentSlot = z.infer<typeof wire.ComponentSlot>;
export type ComponentLife = z.infer<typeof wire.ComponentLife>;
export type Blackout = z.infer<typeof wire.Blackout>;
export type Completion = z.infer<typeof wire.Completion>;
export type Finding = z.infer<typeof wire.Finding>;
export type FollowUp = z.infer<typeof wire.FollowUp>;
export type Stopgap = z.infer<typeof wire.Stopgap>;
export type ChargesSince = z.infer<typeof wire.ChargesSince>;
export type AuditEntry = z.infer<typeof wire.AuditEntry>;
export type WeeklyWindow = z.infer<typeof wire.WeeklyWindow>;

export type MachineLabel = z.infer<typeof wire.MachineLabel>;
export type MachineLabels = z.infer<typeof wire.MachineLabels>;
export type LabelledMachine = z.infer<typeof wire.LabelledMachine>;

export type VisitAnswer = z.infer<typeof wire.VisitAnswer>;
export type SiteEvent = z.infer<typeof wire.SiteEvent>;
export type Clause = z.infer<typeof wire.Clause>;
export type Alert = z.infer<typeof wire.Alert>;

export type CalendarAddress = z.infer<typeof wire.CalendarAddress>;
export type CalendarAddressCreated = z.infer<typeof wire.CalendarAddressCreated>;

export type Person = z.infer<typeof wire.Person>;
export type VisitBar = z.infer<typeof wire.VisitBar>;

export type OrderList = z.infer<typeof wire.OrderList>;
export type ExtraTime = z.infer<typeof wire.ExtraTime>;
export type ChargeDocument = z.infer<typeof wire.ChargeDocument>;
export type ChargeSettings = z.infer<typeof wire.ChargeSettings>;
export type CustomerCharges = z.infer<typeof wire.CustomerCharges>;
export type WebhookEndpoint = z.infer<typeof wire.WebhookEndpoint>;
export type WebhookEndpointCreated = z.infer<typeof wire.WebhookEndpointCreated>;
export type WebhookDelivery = z.infer<typeof wire.WebhookDelivery>;
export type IntegrationKey = z.infer<typeof wire.IntegrationKey>;
export type IntegrationKeyCreated = z.infer<typeof wire.IntegrationKeyCreated>;
export type TelematicsUnit = z.infer<typeof wire.TelematicsUnit>;
export type TelematicsSource = z.infer<typeof wire.TelematicsSource>;
export type NoticeType = z.infer<typeof wire.NoticeType>;
export type SiteContact = z.infer<typeof wire.SiteContact>;

export interface Page<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

export type FieldDay = z.infer<typeof wire.FieldDay>;
export type FieldVisit = FieldDay['visits'][number];
export type FieldMachine = FieldVisit['machines'][number];
export type FieldItem = FieldMachine['items'][number];
export type FieldFact = z.infer<typeof wire.FieldFact>;
export type FieldRecord = z.infer<typeof wire.FieldRecord>;
export type PartUse = z.infer<typeof wire.PartUse>;
