/**
 * Species of the built-in lists with their common and older names and the three letters of the FAO list of species for
 * fishery statistics (codes read in the list of June 2026; names from the same list and from the FAO catalogue of
 * commercial sea cucumbers, Purcell, Samyn and Conand 2012, partly from memory).
 *
 * Older names that were used for two species are left out, because they settle nothing: Stichopus variegatus,
 * Bohadschia similis, Holothuria nobilis for the Pacific black teatfish.
 */

export interface Taxon {
  readonly name: string;
  readonly faoCode: string;
  readonly commonNames: readonly string[];
  readonly synonyms: readonly string[];
}

export const taxa: readonly Taxon[] = [
  { name: 'Holothuria scabra', faoCode: 'HFC', commonNames: ['sandfish'], synonyms: [] },
  {
    name: 'Holothuria lessoni',
    faoCode: 'JCO',
    commonNames: ['golden sandfish'],
    synonyms: ['Holothuria scabra var. versicolor', 'Holothuria timama'],
  },
  { name: 'Holothuria whitmaei', faoCode: 'JDG', commonNames: ['black teatfish'], synonyms: [] },
  { name: 'Holothuria nobilis', faoCode: 'HFN', commonNames: ['black teatfish'], synonyms: [] },
  { name: 'Holothuria fuscogilva', faoCode: 'HFF', commonNames: ['white teatfish'], synonyms: [] },
  { name: 'Holothuria atra', faoCode: 'HFA', commonNames: ['lollyfish'], synonyms: [] },
  { name: 'Holothuria edulis', faoCode: 'HFE', commonNames: ['pinkfish'], synonyms: [] },
  { name: 'Holothuria coluber', faoCode: 'HHW', commonNames: ['snakefish'], synonyms: [] },
  { name: 'Holothuria roseomaculata', faoCode: 'FKI', commonNames: ['red snakefish'], synonyms: [] },
  {
    name: 'Holothuria fuscopunctata',
    faoCode: 'HOZ',
    commonNames: ['elephant trunkfish'],
    synonyms: ['Holothuria axiologa'],
  },
  {
    name: 'Holothuria leucospilota',
    faoCode: 'HFQ',
    commonNames: ['white threadsfish', 'white snakefish'],
    synonyms: [],
  },
  { name: 'Holothuria spinifera', faoCode: 'JDE', commonNames: ['brown sandfish'], synonyms: [] },
  { name: 'Actinopyga mauritiana', faoCode: 'KUY', commonNames: ['surf redfish'], synonyms: [] },
  { name: 'Actinopyga varians', faoCode: 'FJG', commonNames: ['surf redfish'], synonyms: [] },
  { name: 'Actinopyga miliaris', faoCode: 'KUQ', commonNames: ['hairy blackfish'], synonyms: [] },
  { name: 'Actinopyga echinites', faoCode: 'KUE', commonNames: ['deepwater redfish'], synonyms: [] },
  { name: 'Actinopyga lecanora', faoCode: 'YVV', commonNames: ['stonefish'], synonyms: [] },
  {
    name: 'Actinopyga palauensis',
    faoCode: 'YGP',
    commonNames: ["Panning's blackfish", 'deepwater blackfish'],
    synonyms: [],
  },
  { name: 'Actinopyga spinea', faoCode: 'YGS', commonNames: ['burrowing blackfish'], synonyms: [] },
  { name: 'Bohadschia argus', faoCode: 'KUW', commonNames: ['leopardfish', 'tigerfish'], synonyms: [] },
  { name: 'Bohadschia vitiensis', faoCode: 'BDV', commonNames: ['brown sandfish'], synonyms: [] },
  { name: 'Bohadschia marmorata', faoCode: 'KUH', commonNames: ['chalkfish'], synonyms: [] },
  { name: 'Bohadschia ocellata', faoCode: 'FJJ', commonNames: ['ocellated leopardfish'], synonyms: [] },
  {
    name: 'Pearsonothuria graeffei',
    faoCode: 'EHV',
    commonNames: ['flowerfish'],
    synonyms: ['Bohadschia graeffei', 'Bohadschia drachi'],
  },
  { name: 'Stichopus chloronotus', faoCode: 'JCC', commonNames: ['greenfish'], synonyms: [] },
  { name: 'Stichopus herrmanni', faoCode: 'JNG', commonNames: ['curryfish'], synonyms: [] },
  { name: 'Stichopus horrens', faoCode: 'KUN', commonNames: ['dragonfish', 'peanutfish'], synonyms: [] },
  { name: 'Stichopus vastus', faoCode: 'JPW', commonNames: ['brown curryfish'], synonyms: [] },
  { name: 'Stichopus ocellatus', faoCode: 'JPT', commonNames: ['ocellated curryfish'], synonyms: [] },
  { name: 'Stichopus naso', faoCode: 'JPR', commonNames: [], synonyms: [] },
  { name: 'Thelenota ananas', faoCode: 'TFQ', commonNames: ['prickly redfish'], synonyms: [] },
  { name: 'Thelenota anax', faoCode: 'HLX', commonNames: ['amberfish'], synonyms: [] },
  {
    name: 'Thelenota rubralineata',
    faoCode: 'JDZ',
    commonNames: ['lemonfish', 'red-lined sea cucumber'],
    synonyms: [],
  },
  {
    name: 'Rochia nilotica',
    faoCode: 'RQN',
    commonNames: ['trochus', 'commercial top shell'],
    synonyms: ['Trochus niloticus', 'Tectus niloticus'],
  },
  { name: 'Tectus pyramis', faoCode: 'EQY', commonNames: ['pyramid top', 'false trochus'], synonyms: [] },
  { name: 'Turbo marmoratus', faoCode: 'UOA', commonNames: ['green snail'], synonyms: [] },
  {
    name: 'Tridacna maxima',
    faoCode: 'DKX',
    commonNames: ['elongate giant clam', 'small giant clam'],
    synonyms: [],
  },
  { name: 'Tridacna squamosa', faoCode: 'TDS', commonNames: ['fluted giant clam'], synonyms: [] },
  { name: 'Tridacna derasa', faoCode: 'TDD', commonNames: ['smooth giant clam'], synonyms: [] },
  { name: 'Tridacna crocea', faoCode: 'DKC', commonNames: ['crocus clam', 'boring clam'], synonyms: [] },
  { name: 'Tridacna gigas', faoCode: 'TDG', commonNames: ['true giant clam'], synonyms: [] },
  { name: 'Hippopus hippopus', faoCode: 'HIP', commonNames: ['bear paw clam'], synonyms: [] },
  { name: 'Tripneustes gratilla', faoCode: 'TQG', commonNames: ['collector urchin'], synonyms: [] },
  { name: 'Charonia tritonis', faoCode: 'KRN', commonNames: ['triton'], synonyms: [] },
];
