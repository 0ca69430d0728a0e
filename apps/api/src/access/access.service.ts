import { type Clock, type Config, DomainError } from '@deckround/platform';
import type { Prisma, Store } from '@deckround/store';
import { Inject, Injectable } from '@nestjs/common';
import { CLOCK, CONFIG, RATE_LIMITER, STORE } from '../http/tokens.js';
import type { RateLimiter } from '../rate-limits/rate-limiter.js';
import type { Actor, KeyScope, PersonRole } from './actor.js';
import { checkPassword, hashPassword, hashSecret, KEY_PREFIX, newSecret, SESSION_PREFIX } from './secrets.js';

const DAY_MS = 86_400_000;
/** Failed sign-ins for one e-mail address before it has to wait. */
const FAILURES = { quota: 10, windowSeconds: 15 * 60 } as const;
/** A use is written at most this often. */
const SEEN_EVERY_MS = 60_000;

@Injectable()
export class AccessService {
  private decoy: Promise<string> | null = null;

  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(RATE_LIMITER) private readonly limiter: RateLimiter,
  ) {}

  /** @throws DomainError sign-in-failed, the same for an unknown address and a wrong password; too-many-sign-ins */
  async signIn(email: string, password: string) {
    const address = email.toLowerCase();
    await this.refuseWhenTooMany(address);
    const people = await this.store.asOwner((tx) =>
      tx.person.findMany({
        where: { email: address, active: true, passwordHash: { not: null } },
        include: { shop: true },
      }),
    );
    // Unknown addresses cost the same time as known ones.
    if (people.length === 0) await checkPassword(await this.decoyHash(), password);
    for (const person of people) {
      if (!(await checkPassword(person.passwordHash!, password))) continue;
      await this.limiter.forget(failuresOf(address));
      return this.openSession(person);
    }
    await this.limiter.take(failuresOf(address), FAILURES);
    throw new DomainError('sign-in-failed', 'The e-mail address or the password is wrong.');
  }

  /** Whoever was refused too often under this address may try at once: the password is another now. */
  forgetFailures(email: string): Promise<void> {
    return this.limiter.forget(failuresOf(email));
  }

  /** A sign-in of this person; its token is known to the caller alone. */
  async openSession(person: Prisma.PersonGetPayload<{ include: { shop: true } }>) {
    const { secret, hash } = newSecret(SESSION_PREFIX);
    const expiresAt = new Date(this.clock.now().getTime() + this.config.SESSION_MAX_DAYS * DAY_MS);
    await this.store.inShop(person.shopId, (tx) =>
      tx.session.create({ data: { shopId: person.shopId, personId: person.id, tokenHash: hash, expiresAt } }),
    );
    const { id, name, timeZone, currency, units, clockShiftDays } = person.shop;
    return {
      token: secret,
      expiresAt: expiresAt.toISOString(),
      person: { id: person.id, name: person.name, role: person.role as PersonRole, shopName: name },
      // What a screen needs to write its first time and its first sum.
      shop: { id, timeZone, currency, units, clockShiftDays },
    };
  }

  async signOut(actor: Actor): Promise<void> {
    if (actor.sessionId === null) return;
    const { sessionId } = actor;
    await this.store.inShop(actor.shopId, (tx) =>
      tx.session.update({ where: { id: sessionId }, data: { endedAt: this.clock.now() } }),
    );
  }

  /** Who a bearer token belongs to. @throws DomainError signed-out when it is unknown, ended or too old */
  async actorOf(token: string): Promise<Actor> {
    const actor = token.startsWith(`${KEY_PREFIX}_`) ? await this.integrationOf(token) : await this.personOf(token);
    if (!actor) throw new DomainError('signed-out', 'The sign-in has ended or never was: sign in again.');
    return actor;
  }

  private async personOf(token: string): Promise<Actor | null> {
    const now = this.clock.now();
    return this.store.asOwner(async (tx) => {
      const session = await tx.session.findUnique({
        where: { tokenHash: hashSecret(token) },
        include: { person: { include: { personSites: true } } },
      });
      const idleSince = new Date(now.getTime() - this.config.SESSION_IDLE_DAYS * DAY_MS);
      if (
        !session ||
        session.endedAt ||
        session.expiresAt < now ||
        session.lastSeenAt < idleSince ||
        !session.person.active
      )
        return null;
      if (now.getTime() - session.lastSeenAt.getTime() > SEEN_EVERY_MS) {
        await tx.session.update({ where: { id: session.id }, data: { lastSeenAt: now } });
      }
      const { person } = session;
      return {
        id: person.id,
        shopId: person.shopId,
        kind: 'person' as const,
        name: person.name,
        role: person.role as PersonRole,
        scopes: [],
        requestsPerMinute: null,
        siteIds: person.role === 'supervisor' ? person.personSites.map((each) => each.siteId) : null,
        sessionId: session.id,
      };
    });
  }

  private async integrationOf(token: string): Promise<Actor | null> {
    const now = this.clock.now();
    return this.store.asOwner(async (tx) => {
      const key = await tx.integrationKey.findUnique({ where: { keyHash: hashSecret(token) } });
      if (!key || key.revokedAt || (key.expiresAt && key.expiresAt < now)) return null;
      if (!key.lastUsedAt || now.getTime() - key.lastUsedAt.getTime() > SEEN_EVERY_MS) {
        await tx.integrationKey.update({ where: { id: key.id }, data: { lastUsedAt: now } });
      }
      return {
        id: key.id,
        shopId: key.shopId,
        kind: 'integration' as const,
        name: key.name,
        role: null,
        scopes: key.scopes as KeyScope[],
        requestsPerMinute: key.requestsPerMinute,
        siteIds: null,
        sessionId: null,
      };
    });
  }

  private async refuseWhenTooMany(address: string): Promise<void> {
    const { allowed, retryAfterSeconds } = await this.limiter.take(failuresOf(address), FAILURES, 0);
    if (!allowed) {
      throw new DomainError(
        'too-many-sign-ins',
        'Too many failed sign-ins for this address: wait as long as Retry-After says.',
        [],
        retryAfterSeconds,
      );
    }
  }

  private decoyHash(): Promise<string> {
    this.decoy ??= hashPassword('nobody has this password');
    return this.decoy;
  }
}

const failuresOf = (address: string) => `sign-in:${address}`;
