export type PlanFaultCode =
  | 'structure'
  | 'item'
  | 'skill'
  | 'release'
  | 'minutes'
  | 'access'
  | 'shift'
  | 'overtime'
  | 'drive'
  | 'lunch'
  | 'route-sums'
  | 'machines-down'
  | 'promise'
  | 'cost'
  | 'left-out'
  | 'load';

/** One thing wrong with a plan, in words that name where. */
export interface PlanFault {
  code: PlanFaultCode;
  message: string;
}

export type Report = (code: PlanFaultCode, message: string) => void;
