/** Held answers let through: for the surveys on the screen at that moment and no others, until this page is left or closed. */

interface Accepted {
  readonly who: string;
  readonly why: string;
}

let given: (Accepted & { readonly surveys: string }) | null = $state.raw(null);

export const acceptedFor = {
  of(surveyIds: readonly string[]): Accepted | null {
    if (given === null || given.surveys !== surveyIds.join(' ')) return null;
    return { who: given.who, why: given.why };
  },
  /** The one that covers this survey, for where a number of it comes from. */
  ofOne(surveyId: string): Accepted | null {
    return given?.surveys.split(' ').includes(surveyId) ? { who: given.who, why: given.why } : null;
  },
  let(accepted: Accepted, surveyIds: readonly string[]): void {
    given = { ...accepted, surveys: surveyIds.join(' ') };
  },
  hold(): void {
    given = null;
  },
};
