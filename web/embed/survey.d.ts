// <hangtrue-survey>: the element and its events. The types of orders and profiles below
// are made from their JSON Schemas.

/** What `hangtrue-change` and `hangtrue-complete` tell. */
export interface HangtrueNews {
  /** The order as it stands. */
  order: HangtrueOrder;
  /** Its link; null while something stands against sending it. */
  link: string | null;
  /** The order in one line of plain text; null while something stands against sending it. */
  line: string | null;
}

/** What `hangtrue-error` tells. */
export interface HangtrueFault {
  /** Whether the survey could not be loaded, or its profile not be used. */
  code: "load" | "profile";
  /** What happened, in words. */
  message: string;
}

export class HangtrueSurvey extends HTMLElement {
  /** The version of the script. */
  static readonly version: string;
  /** The dealer's rules: an address of the page's or the script's own origin, or the object. */
  profile: string | HangtrueProfile | null;
  /** The unit that fields begin with. */
  unit: "in" | "mm" | null;
  /** An order to open: a link or its payload. */
  order: string | null;
  /** The colour scheme; that of the reader if null. */
  theme: "light" | "dark" | "auto" | null;
  /** The name under which a form sends the order's link. */
  readonly name: string;
  readonly form: HTMLFormElement | null;
  /** The order's link; empty while something stands against sending it. */
  readonly value: string;
  readonly validity: ValidityState;
  readonly validationMessage: string;
  checkValidity(): boolean;
  reportValidity(): boolean;
}

declare global {
  interface HTMLElementTagNameMap {
    "hangtrue-survey": HangtrueSurvey;
  }
  interface HTMLElementEventMap {
    "hangtrue-ready": CustomEvent<{ version: string }>;
    "hangtrue-change": CustomEvent<HangtrueNews>;
    "hangtrue-complete": CustomEvent<HangtrueNews>;
    "hangtrue-error": CustomEvent<HangtrueFault>;
  }
}
