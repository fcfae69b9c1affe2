// A webmaster's own script, as the compiler sees it: what is right compiles, what is wrong
// does not. Each `@ts-expect-error` is an error by itself where nothing is wrong behind it.
import { HangtrueSurvey } from "hangtrue-survey";
import type {
  HangtrueFault,
  HangtrueNews,
  HangtrueOrder,
  HangtrueOrderParts,
  HangtrueProfile,
  HangtrueProfileParts,
} from "hangtrue-survey";

/** Holds only where both types are the same. */
type Same<A, B> =
  (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
const same = <A, B>(_: Same<A, B>): void => {};

// The element, found and made.
const made = document.createElement("hangtrue-survey");
same<typeof made, HangtrueSurvey>(true);
const survey: HangtrueSurvey | null = document.querySelector("hangtrue-survey");
const version: string = HangtrueSurvey.version;

// Attributes as properties.
made.unit = "mm";
made.theme = "auto";
made.order = null;
made.lang = "fr";
made.profile = "profile.json";
made.setAttribute("required", "");
if (made.checkValidity() && made.validity.valid && made.form?.id === made.name) {
  const link: string = made.value;
  console.info(link, version, made.validationMessage, made.reportValidity());
}
// @ts-expect-error: no such unit
made.unit = "cm";
// @ts-expect-error: no such scheme
made.theme = "night";
// @ts-expect-error: the order is a text
made.order = 7;
// @ts-expect-error: the link is the element's own
made.value = "#";
// @ts-expect-error: the form is told by the page
made.name = "order";
// @ts-expect-error: no such property
made.units = "mm";

// Events, at the element and at whatever is around it.
survey?.addEventListener("hangtrue-complete", ({ detail }) => {
  same<typeof detail, HangtrueNews>(true);
  same<typeof detail.order, HangtrueOrder>(true);
  same<typeof detail.link, string | null>(true);
  // @ts-expect-error: the link may be null
  const length: number = detail.link.length;
  send(detail.order, detail.line ?? "", length);
});
document.body.addEventListener("hangtrue-error", ({ detail }) => {
  same<typeof detail, HangtrueFault>(true);
  if (detail.code === "profile") console.info(detail.message);
  // @ts-expect-error: no such code
  if (detail.code === "network") console.info(detail.message);
});
made.addEventListener("hangtrue-ready", ({ detail }) => console.info(detail.version));
made.addEventListener("hangtrue-change", (event) => {
  // @ts-expect-error: a change has no fault
  console.info(event.detail.code);
});

// The order.
function send(order: HangtrueOrder, line: string, length: number): void {
  const format: "hangtrue-order/1" = order.format;
  const width: number | undefined = order.order?.width?.nm;
  const low: HangtrueOrderParts.Place | undefined = order.readings.width?.low;
  const typed = Array.isArray(low) ? low[0] : low;
  const text = typeof typed === "object" ? typed.text : typed;
  const answers = order.answers?.map(({ question, answer }) => `${question}: ${answer}`);
  console.info(format, width, text, answers, order.profile?.revision, line, length);
  // @ts-expect-error: the readings may lack a place
  console.info(order.readings.width.low);
  // @ts-expect-error: no such reading
  console.info(order.readings.depth);
  // @ts-expect-error: a number of the order is in nanometres and as text
  console.info(order.order?.width?.inches);
}

// A profile.
const door: HangtrueProfileParts.DoorFile = {
  key: "rail",
  name: { en: "Rail", fr: "Rail" },
  track: { radius: "12 in", slope: 2 },
  panel: { weight: "2.15 lb/ft2" },
  preload_turns: 3,
};
const profile: HangtrueProfile = {
  format: "hangtrue-profile/1",
  name: "Demo Doors",
  revision: 7,
  unit: "in",
  languages: ["en", "es"],
  limits: { width: { most: "96 in", reason: "our widest panel", stop: true } },
  doors: [door],
  questions: [
    {
      key: "side-seal",
      ask: "Which side seals?",
      kind: "choice",
      choices: [
        { key: "none", label: "None" },
        { key: "bulb", label: "Bulb" },
      ],
    },
  ],
};
made.profile = profile;
// @ts-expect-error: a profile needs its name and its revision
made.profile = { format: "hangtrue-profile/1" };
// @ts-expect-error: another format
made.profile = { ...profile, format: "hangtrue-profile/2" };
// @ts-expect-error: no such language
made.profile = { ...profile, languages: ["de"] };
// @ts-expect-error: a limit says why
made.profile = { ...profile, limits: { width: { most: "96 in" } } };
// @ts-expect-error: no such key
made.profile = { ...profile, limit: {} };
// @ts-expect-error: no such kind of question
made.profile = { ...profile, questions: [{ key: "a", ask: "b", kind: "number" }] };
// @ts-expect-error: a length is a text with its unit
made.profile = { ...profile, doors: [{ ...door, header: 7.5 }] };
