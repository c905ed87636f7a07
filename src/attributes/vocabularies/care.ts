import type { Vocabulary } from '../definition.ts';
import { COMMON, family } from './term.ts';

/** What was done to a piece after it was made: mending in use, and the work of conservators. */

const common = family(COMMON);

// biome-ignore format: one term a line
export const REPAIR_TIME: Vocabulary = { id: 'repairTime', label: 'When repaired', terms: [
  common('inUse', null, 'while in use', 'Worn, soiled or decayed together with the fabric: part of the life of the object.', { en: ['ancient', 'ancient repair', 'in antiquity', 'original repair', 'old repair', 'in use', 'contemporary repair'], de: ['antik', 'alt', 'alte Reparatur', 'zeitgenössisch', 'antike Reparatur'], fr: ['ancienne', 'antique', 'réparation ancienne', 'd’époque'], it: ['antica', 'antico', 'riparazione antica'], es: ['antigua', 'antiguo', 'reparación antigua'], da: ['oldtidig', 'gammel', 'forhistorisk'], no: ['forhistorisk'] }),
  common('afterFinding', null, 'after finding', 'By finders, dealers or conservators: says nothing of the past, and its threads are not measured.', { en: ['modern', 'modern repair', 'recent', 'later repair', 'conservator', 'by conservators', 'museum repair'], de: ['modern', 'neuzeitlich', 'rezent', 'restauratorisch', 'moderne Reparatur'], fr: ['moderne', 'récente', 'réparation moderne'], it: ['moderna', 'moderno', 'recente', 'riparazione moderna'], es: ['moderna', 'reciente', 'reparación moderna'], da: ['nyere', 'moderne reparation'], no: ['moderne reparasjon'] }),
] };

// biome-ignore format: one term a line
export const TREATMENT: Vocabulary = { id: 'treatment', label: 'Conservation treatments', terms: [
  common('untreated', null, 'untreated', 'Nothing was done to it since it was found; measured as it lay.', { en: ['not treated', 'no treatment', 'not conserved', 'unconserved', 'none'], de: ['unbehandelt', 'nicht konserviert', 'keine'], fr: ['non traité', 'non traitée', 'aucun'], it: ['non trattato', 'nessuno'], es: ['sin tratar', 'ninguno'], da: ['ubehandlet', 'ikke konserveret'], no: ['ubehandlet'] }),
  common('surfaceCleaned', null, 'cleaned dry', 'Soil lifted off with brush, tool or air; sizes as before.', { en: ['surface cleaned', 'dry cleaned', 'mechanically cleaned', 'cleaned'], de: ['trocken gereinigt', 'mechanisch gereinigt', 'gereinigt'], fr: ['nettoyé', 'nettoyage à sec', 'dépoussiéré'], it: ['pulito', 'pulitura a secco', 'pulitura meccanica'], es: ['limpiado', 'limpieza mecánica'], da: ['renset', 'mekanisk renset'], no: ['renset'] }),
  common('wetCleaned', null, 'cleaned wet', 'Washed; threads swell, and may shrink on drying.', { en: ['washed', 'wet cleaning', 'wet-cleaned'], de: ['nass gereinigt', 'gewaschen', 'Nassreinigung'], fr: ['lavé', 'nettoyage humide'], it: ['lavato', 'lavaggio'], es: ['lavado'], da: ['vasket', 'vådrenset'], no: ['vasket'] }),
  common('humidified', null, 'relaxed with moisture', 'Opened or laid flat in damp air; creases go, lengths may grow.', { en: ['humidified', 'relaxed', 'unfolded with moisture', 'humidification'], de: ['befeuchtet', 'geglättet'], fr: ['humidifié', 'humidification'], it: ['umidificato'], es: ['humidificado'], da: ['fugtet'], no: ['fuktet'] }),
  common('consolidated', null, 'consolidated', 'Soaked with a binder; threads may be thicker, fibre and twist harder to see, dating and protein analysis hindered.', { en: ['consolidation', 'impregnated', 'strengthened'], de: ['gefestigt', 'Festigung', 'imprägniert'], fr: ['consolidé', 'consolidation', 'imprégné'], it: ['consolidato', 'consolidamento'], es: ['consolidado', 'consolidación'], da: ['konsolideret', 'imprægneret'], no: ['konsolidert'] }),
  common('freezeDried', null, 'freeze-dried', 'Wet finds dried as ice; what shrinkage is left depends on what they were soaked with.', { en: ['freeze dried', 'freeze-drying', 'lyophilised', 'lyophilized'], de: ['gefriergetrocknet', 'Gefriertrocknung'], fr: ['lyophilisé', 'lyophilisation'], it: ['liofilizzato'], es: ['liofilizado'], da: ['frysetørret'], no: ['frysetørket'] }),
  common('airDried', null, 'dried in air', 'A wet find left to dry: shrunk, often much.', { en: ['air-dried', 'dried out after excavation', 'allowed to dry'], de: ['luftgetrocknet', 'an der Luft getrocknet'], fr: ['séché à l’air'], it: ['essiccato all’aria'], es: ['secado al aire'], da: ['lufttørret'], no: ['lufttørket'] }),
  common('mounted', null, 'mounted on a support', 'Sewn or stuck to a ground: one face is hidden, sizes are as laid.', { en: ['mounted', 'supported', 'sewn to a support', 'backed'], de: ['auf Trägergewebe', 'montiert', 'unterlegt'], fr: ['monté', 'doublé', 'sur support'], it: ['montato', 'su supporto'], es: ['montado', 'sobre soporte'], da: ['monteret'], no: ['montert'] }),
] };
