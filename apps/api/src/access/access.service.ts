import { type Clock, type Config, DomainError } from '@deckround/platform';
import type { Store } from '@deckround/store';
import { Inject, Injectable } from '@nestjs/common';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import type { Actor, KeyScope, PersonRole } from './actor.js';
import { checkPassword, hashPassword, hashSecret, KEY_PREFIX, newSecret, SESSION_PREFIX } from './secrets.js';

const DAY_MS = 86_400_000;
/** Failed sign-ins for one e-mail address within the window before it has to wait. */
const MAX_FAILURES = 10;
const FAILURE_WINDOW_MS = 15 * 60_000;
/** A use is written at most this often. */
const SEEN_EVERY_MS = 60_000;

@Injectable()
export class AccessService {
  private readonly failures = new Map<string, number[]>();
  private decoy: Promise<string> | null = null;

  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  /** @throws DomainError sign-in-failed, the same for an unknown address and a wrong password; too-many-sign-ins */
  async signIn(email: string, password: string) {
    const address = email.toLowerCase();
    this.refuseWhenTooMany(address);
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
      this.failures.delete(address);
      const { secret, hash } = newSecret(SESSION_PREFIX);
      const expiresAt = new Date(this.clock.now().getTime() + this.config.SESSION_MAX_DAYS * DAY_MS);
      await this.store.inShop(person.shopId, (tx) =>
        tx.session.create({ data: { shopId: person.shopId, personId: person.id, tokenHash: hash, expiresAt } }),
      );
      return {
        token: secret,
        expiresAt: expiresAt.toISOString(),
        person: { id: person.id, name: person.name, role: person.role as PersonRole, shopName: person.shop.name },
      };
    }
    this.failures.set(address, [...(this.failures.get(address) ?? []), this.clock.now().getTime()]);
    throw new DomainError('sign-in-failed', 'The e-mail address or the password is wrong.');
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
        siteIds: null,
        sessionId: null,
      };
    });
  }

  private refuseWhenTooMany(address: string): void {
    const since = this.clock.now().getTime() - FAILURE_WINDOW_MS;
    const recent = (this.failures.get(address) ?? []).filter((time) => time > since);
    if (recent.length === 0) this.failures.delete(address);
    else this.failures.set(address, recent);
    if (recent.length >= MAX_FAILURES) {
      throw new DomainError(
        'too-many-sign-ins',
        'Too many failed sign-ins for this address: wait a quarter of an hour.',
      );
    }
  }

  private decoyHash(): Promise<string> {
    this.decoy ??= hashPassword('nobody has this password');
    return this.decoy;
  }
}
