/**
 * How a confidence interval is called in running text, in English, German, French, Italian, Spanish and Danish; the
 * level stands before or behind it. Common practice of papers, no source.
 */
export const INTERVAL_WORDS = String.raw`(?:CI|C\.I\.|CrI|KI|IC|I\.C\.|[Cc]onfidence [Ii]ntervals?|conf\.? int\.?|[Cc]onfidence limits|[Kk]onfidenzintervall|[Vv]ertrauensintervall|[Vv]ertrauensbereich|[Ii]ntervalle de confiance|[Ii]ntervallo di confidenza|[Ii]ntervalo de confianza|[Kk]onfidensinterval|[Ss]ikkerhedsinterval)`;

/** "at 95 %", "à 95 %", "al 95 %", "del 95 %", "zu 95 %": words between the name and a level behind it. */
export const BEFORE_LEVEL = String.raw`(?:à|al|del|at|zu|zum Niveau|på)\s`;
