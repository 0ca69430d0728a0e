import { clause } from '@deckround/planning';
import type { FieldFault } from '@deckround/platform';
import type { z } from 'zod';

/**
 * What zod finds wrong with a field, as a key with its values. A message of our own stands in the contract and is known
 * by its words.
 */
export function faultClause(issue: z.core.$ZodIssue): FieldFault['clause'] {
  switch (issue.code) {
    case 'invalid_type':
      return clause('form-type', { expected: issue.expected });
    case 'too_small':
      if (issue.origin === 'string' || issue.origin === 'array')
        return clause(`form-few-${issue.origin}`, { n: Number(issue.minimum) });
      return clause(issue.inclusive === false ? 'form-not-above' : 'form-below', { least: String(issue.minimum) });
    case 'too_big':
      if (issue.origin === 'string' || issue.origin === 'array')
        return clause(`form-many-${issue.origin}`, { n: Number(issue.maximum) });
      return clause(issue.inclusive === false ? 'form-not-below' : 'form-above', { most: String(issue.maximum) });
    case 'invalid_format':
      // What a pattern is for is said in the contract.
      return issue.format === 'regex' ? undefined : clause('form-format', { format: issue.format });
    case 'invalid_value':
      return clause('form-choice', { choices: issue.values.map(String).join(', ') });
    case 'unrecognized_keys':
      return clause('form-unknown', { names: issue.keys.join(', ') });
    case 'not_multiple_of':
      return clause('form-multiple', { step: String(issue.divisor) });
    case 'invalid_union':
      return clause('form-union');
    default:
      return undefined;
  }
}
