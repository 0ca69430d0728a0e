import { checkPlan, PlanningSnapshot, WeekPlan } from '@deckround/planning';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';
import { readDocument } from '../read-document.js';

export function addCheck(program: Command): void {
  program
    .command('check')
    .description('check a plan against its planning snapshot, with the checker that shares no code with the planner')
    .argument('<snapshot>', 'planning snapshot, as JSON')
    .argument('<plan>', 'plan, as JSON')
    .action((snapshotFile: string, planFile: string) => {
      const snapshot = readDocument(snapshotFile, PlanningSnapshot, 'a planning snapshot');
      const plan = readDocument(planFile, WeekPlan, 'a plan');
      const faults = checkPlan(snapshot, plan);
      if (faults.length > 0)
        throw new CliError(
          `The plan breaks ${faults.length} rules:\n${faults.map((fault) => `  ${JSON.stringify(fault)}`).join('\n')}`,
          1,
        );
      process.stdout.write(`The plan keeps every rule; ${plan.visits.length} visits, ${plan.cost.total} cents.\n`);
    });
}
