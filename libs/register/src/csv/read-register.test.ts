import { describe, expect, it } from '@jest/globals';
import { aRegisterFolder, lines, memorySource } from '../test-support/a-register-folder.js';
import { describeFault } from './fault.js';
import { readRegister } from './read-register.js';

type Changes = Parameters<typeof aRegisterFolder>[0];

async function faultsOf(changes: Changes): Promise<string[]> {
  const { register, faults, faultCount } = await readRegister(memorySource(aRegisterFolder(changes)));
  expect(register === null).toBe(faultCount > 0);
  return faults.map(describeFault);
}

async function registerOf(changes: Changes = {}, pieceBytes?: number) {
  const { register, faults, counts } = await readRegister(memorySource(aRegisterFolder(changes), pieceBytes));
  expect(faults).toEqual([]);
  return { register: register!, counts };
}

/** A file of the smallest register with its one row changed, e.g. one cell. */
function changed(file: string, from: string, to: string): Record<string, string> {
  const content = aRegisterFolder()[file] as string;
  expect(content).toContain(from);
  return { [file]: content.replace(from, to) };
}

describe('readRegister', () => {
  it('reads the smallest register', async () => {
    const { register, counts } = await registerOf();
    expect(register.customers).toEqual([
      { id: 'C1', name: 'Dapple Parks', billingEmail: '', termsDays: 30, taxExempt: false },
    ]);
    expect(register.sites[0]).toMatchObject({
      id: 'S1',
      customerId: 'C1',
      latitude: 41.6,
      timeZone: 'America/Chicago',
    });
    expect(register.sites[0]!.access).toHaveLength(5);
    expect(register.sites[0]!.blackouts).toEqual([]);
    expect(register.machines[0]).toMatchObject({ id: 'M1', siteId: 'S1', machineClass: 'zero-turn', spindles: 3 });
    expect(register.technicians[0]).toMatchObject({ wageCentsPerHour: 3200, skills: ['mechanical', 'electrical'] });
    expect(register.parts[0]).toMatchObject({ code: 'BLT-DECK', unitPriceCents: 6100, onHand: 2, leadDays: 5 });
    expect(register.meterChanges).toEqual([{ machineId: 'M1', changedAt: '2013-08-01', oldHours: 412.6, newHours: 0 }]);
    expect(register.readings[0]).toMatchObject({ machineId: 'M1', readAt: '2013-06-03T07:45:00', hours: 350.2 });
    expect(register.completions[0]).toMatchObject({ code: 'sharpen-blades', slot: null, part: null, outcome: 'done' });
    expect(counts).toMatchObject({ 'machines.csv': 1, 'readings.csv': 1, 'blackouts.csv': 0 });
  });

  it('reads the same register with CRLF, byte order marks and another column order', async () => {
    const { register } = await registerOf();
    const other = Object.fromEntries(
      Object.entries(aRegisterFolder({ 'parts.csv': null })).map(([file, content]) => [
        file,
        `\ufeff${(content as string).replaceAll('\n', '\r\n')}`,
      ]),
    );
    other['parts.csv'] = lines(
      'lead_days,on_hand,unit_cost,unit_price,designation,description,part_id',
      '5,2,33.00,61.00,B,deck drive belt,BLT-DECK',
    );
    expect((await registerOf(other, 5)).register).toEqual(register);
  });

  it('reads blackout days, of the sites that have any', async () => {
    const blackouts = lines(
      'site_id,from,to,reason',
      'S1,2014-06-18,2014-06-19,ceremony',
      'S1,2014-06-25,2014-06-25,"exams, all day"',
    );
    const { register } = await registerOf({ 'blackouts.csv': blackouts });
    expect(register.sites[0]!.blackouts).toEqual([
      { from: '2014-06-18', to: '2014-06-19', reason: 'ceremony' },
      { from: '2014-06-25', to: '2014-06-25', reason: 'exams, all day' },
    ]);
  });

  it("reads a site's own time zone; an empty one is the shop's", async () => {
    const sites = lines(
      'site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes,time_zone',
      'S1,C1,North Park,41.6,-93.6,Mon 07:00-15:30,10,1,,America/Denver',
      'S2,C1,South Park,41.5,-93.6,Mon 07:00-15:30,10,1,,',
    );
    const { register } = await registerOf({ 'sites.csv': sites });
    expect(register.sites.map((site) => site.timeZone)).toEqual(['America/Denver', 'America/Chicago']);
  });

  it('reads where a meter rolls over, of the machines of which it is told', async () => {
    const machines = lines(
      'machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes,meter_rollover_hours',
      'M1,S1,zero-turn,,,A,,3,normal,,10000',
      'M2,S1,zero-turn,,,B,,3,normal,,',
    );
    const { register } = await registerOf({ 'machines.csv': machines });
    expect(register.machines.map((machine) => machine.meterRolloverHours)).toEqual([10_000, null]);
    expect(await faultsOf({ 'machines.csv': machines.replace('10000', '9999.5') })).toEqual([
      'machines.csv, line 2, column meter_rollover_hours: 9999.5 must be a whole number of h',
    ]);
  });

  it('reads when a machine was retired, of the machines of which it is told', async () => {
    const machines = lines(
      'machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes,retired_on',
      'M1,S1,zero-turn,,,A,,3,normal,,2014-05-31',
      'M2,S1,zero-turn,,,B,,3,normal,,',
    );
    const { register } = await registerOf({ 'machines.csv': machines });
    expect(register.machines.map((machine) => machine.retiredOn)).toEqual(['2014-05-31', null]);
    expect(await faultsOf({ 'machines.csv': machines.replace('2014-05-31', 'last year') })).toHaveLength(1);
    expect(await faultsOf({ 'machines.csv': machines.replace('A,,', 'A,2014-06-01,') })).toEqual([
      'machines.csv, line 2, column retired_on: 2014-05-31 lies before 2014-06-01: the first day comes first',
    ]);
    expect(await faultsOf({ 'machines.csv': machines.replace('A,,', 'A,2014-05-31,') })).toEqual([]);
  });

  it('takes the same reading told twice as one, and another value at the same time as another', async () => {
    const row = 'M1,2013-06-03T07:45:00,350.2,telematics';
    const { register, counts } = await registerOf({
      'readings.csv': lines(
        'machine_id,read_at,hours,source',
        row,
        row,
        'M1,2013-06-03 07:45,350.20,telematics',
        'M1,2013-06-03T07:45:00,350.9,telematics',
      ),
    });
    expect(register.readings.map((reading) => reading.hours)).toEqual([350.2, 350.9]);
    expect(counts['readings.csv']).toBe(4);
  });

  it('takes the same completion told twice as one, and refuses one that differs', async () => {
    const header = 'machine_id,item,slot,done_at,hours,outcome,part';
    const row = 'M1,sharpen-blades,,2013-06-03,350.2,done,';
    expect((await registerOf({ 'service_history.csv': lines(header, row, row) })).register.completions).toHaveLength(1);
    expect(
      await faultsOf({ 'service_history.csv': lines(header, row, 'M1,sharpen-blades,,2013-06-03,350.2,failed,') }),
    ).toEqual([
      'service_history.csv, line 3, column done_at: sharpen-blades on M1, done on 2013-06-03, stands already in line 2: remove or renumber one of them',
    ]);
  });

  it.each(Object.keys(aRegisterFolder()))('says what to do when %s is missing, and only that', async (file) => {
    const [fault, ...more] = await faultsOf({ [file]: null });
    expect(more).toEqual([]);
    expect(fault).toContain(`${file}: is missing: put it into the folder, with the first line `);
    expect(fault).toContain((aRegisterFolder()[file] as string).split('\n')[0]);
  });

  it.each<[string, Changes, string[]]>([
    [
      'unknown customer',
      changed('sites.csv', 'S1,C1', 'S1,C9'),
      ['sites.csv, line 2, column customer_id: "C9" is not in customers.csv: add the customer or correct it'],
    ],
    [
      'unknown site',
      changed('machines.csv', 'M1,S1', 'M1,S9'),
      ['machines.csv, line 2, column site_id: "S9" is not in sites.csv: add the site or correct it'],
    ],
    [
      'unknown class',
      changed('machines.csv', 'zero-turn', 'hovercraft'),
      [
        'machines.csv, line 2, column class: "hovercraft" is not a machine class: use one of zero-turn, stand-on, walk-behind, front-deck, wide-area, tractor-finish-deck',
      ],
    ],
    [
      'unknown machine',
      changed('readings.csv', 'M1', 'M9'),
      ['readings.csv, line 2, column machine_id: "M9" is not in machines.csv: add the machine or correct it'],
    ],
    [
      'meter change of an unknown machine',
      changed('meter_changes.csv', 'M1', 'M9'),
      ['meter_changes.csv, line 2, column machine_id: "M9" is not in machines.csv: add the machine or correct it'],
    ],
    [
      'unknown part',
      changed('service_history.csv', 'done,', 'done,BLT-9'),
      ['service_history.csv, line 2, column part: "BLT-9" is not in parts.csv: add the part or leave it empty'],
    ],
    [
      'blackout of an unknown site',
      { 'blackouts.csv': lines('site_id,from,to,reason', 'S9,2014-06-18,2014-06-18,') },
      ['blackouts.csv, line 2, column site_id: "S9" is not in sites.csv: add the site or correct it'],
    ],
    [
      'blackout that ends before it begins',
      { 'blackouts.csv': lines('site_id,from,to,reason', 'S1,2014-06-18,2014-06-17,') },
      ['blackouts.csv, line 2, column to: 2014-06-17 lies before 2014-06-18: the first day comes first'],
    ],
    [
      'customer twice',
      { 'customers.csv': lines('customer_id,name,billing_email,terms_days,tax_exempt', 'C1,A,,1,no', 'C1,B,,1,no') },
      ['customers.csv, line 3, column customer_id: "C1" stands already in line 2: remove or renumber one of them'],
    ],
    [
      'two meter changes on one day',
      {
        'meter_changes.csv': lines(
          'machine_id,changed_at,old_hours,new_hours',
          'M1,2013-08-01,412.6,0',
          'M1,2013-08-01,2,0',
        ),
      },
      [
        'meter_changes.csv, line 3, column changed_at: a second meter change of M1 on 2013-08-01 stands already in line 2: remove or renumber one of them',
      ],
    ],
    [
      'faults in several files',
      { ...changed('sites.csv', '41.6', '412'), ...changed('readings.csv', '350.2', '-5') },
      [
        'sites.csv, line 2, column latitude: 412 degrees is outside -90 to 90: correct it',
        'readings.csv, line 2, column hours: -5 h is outside 0 to 999999: correct it',
      ],
    ],
  ])('refuses a register: %s', async (_name, changes, expected) => {
    expect(await faultsOf(changes)).toEqual(expected);
  });

  it('names the service items of the class when an item is unknown to it', async () => {
    const [fault] = await faultsOf(changed('service_history.csv', 'sharpen-blades', 'polish-chrome'));
    expect(fault).toMatch(
      /^service_history.csv, line 2, column item: "polish-chrome" is not a service item of zero-turn: use one of .*sharpen-blades/,
    );
  });

  describe('says a thing once', () => {
    const manyReadings = lines(
      'machine_id,read_at,hours,source',
      ...Array.from(
        { length: 50 },
        (_, i) => `M1,2013-06-${String((i % 30) + 1).padStart(2, '0')}T08:00,${i},technician`,
      ),
    );

    it.each<[string, string | Uint8Array]>([
      ['has a wrong header', 'machine,site\nM1,S1\n'],
      ['is empty', ''],
      ['is not text', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13])],
      [
        'breaks off',
        lines('machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes', 'M0,S1,zero-turn,"'),
      ],
    ])('when machines.csv %s', async (_name, machines) => {
      const faults = await faultsOf({ 'machines.csv': machines, 'readings.csv': manyReadings });
      expect(faults.length).toBeGreaterThan(0);
      expect(faults.filter((fault) => !fault.startsWith('machines.csv'))).toEqual([]);
    });

    it("when a machine's own row has a fault", async () => {
      const faults = await faultsOf({
        ...changed('machines.csv', '2012-04-01', '2012-04-31'),
        'readings.csv': manyReadings,
      });
      expect(faults).toEqual([
        'machines.csv, line 2, column in_service_on: "2012-04-31" is not a date: write it like 2014-06-16',
      ]);
    });

    it("when a site's, customer's or part's own row has a fault", async () => {
      expect(await faultsOf(changed('customers.csv', '30', 'thirty'))).toHaveLength(1);
      expect(await faultsOf(changed('sites.csv', 'Mon-Fri', 'Fri-Mon'))).toHaveLength(1);
      expect(
        await faultsOf({
          ...changed('parts.csv', '61.00', '$61'),
          ...changed('service_history.csv', 'done,', 'done,BLT-DECK'),
        }),
      ).toHaveLength(1);
    });

    it('yet names readings of machines that a sound machines.csv does not hold', async () => {
      const machines = 'machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes\n';
      const faults = await faultsOf({ 'machines.csv': machines });
      expect(faults.map((fault) => fault.split(',')[0])).toEqual([
        'meter_changes.csv',
        'readings.csv',
        'service_history.csv',
      ]);
    });
  });

  it('counts the faults that it does not keep', async () => {
    const readings = lines(
      'machine_id,read_at,hours,source',
      ...Array.from({ length: 1000 }, () => 'M1,never,1,manager'),
    );
    const { faults, faultCount, register } = await readRegister(
      memorySource(aRegisterFolder({ 'readings.csv': readings })),
    );
    expect([faults.length, faultCount, register]).toEqual([200, 1000, null]);
  });
});
