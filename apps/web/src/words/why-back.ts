/** Why a used part that was recorded counts no more, as the contract knows it. */
export const WHY_BACK = ['not-used', 'other-part', 'wrong-quantity'] as const;
export type WhyBack = (typeof WHY_BACK)[number];
