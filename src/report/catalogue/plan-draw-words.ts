/** Sentences about draws, laid belts and waypoints of a plan in the book. */

export const drawWords = {
  'plan-exists':
    'there is a plan {name} already, drawn on {drawnOn} by {drawnBy}; draw under another name, or replace it with --accept "who: why" (the old draw stays in the history)',
  'plan-no-map':
    'there is no map of {strata}, so no place there can be drawn; bring it with “slateline strata --from FILE”[; mapped are {mapped}]',
  'plan-option-needs': '{option} needs {needs}; without it nothing would come of it',
  'plan-stations-unclear':
    'say how many stations: --stations "north flat: 8" for each stratum, or --total 24 to divide them, one of the two',
  'plan-nothing-drawn':
    'no station is asked for anywhere; a plan needs at least 1, and 3 in a stratum to know a spread',
  'plan-stratum-crowded':
    '{stratum}: {stations} {stations:station|stations} in {areaHa} ha {stations:leaves|leave} {eachM2} m² to each, and one station searches {searchedM2} m²; they would lie on one another: plan fewer',
  'plan-position-unclear': 'hand-picked station {code}: {detail}',
  'plan-position-doubt': 'hand-picked station {code}: {detail} (planned at {position})',
  'plan-hand-picked-nowhere':
    'hand-picked station {code} lies in no stratum of the plan; the nearest is {stratum}, {distanceM} m away: is a digit or a letter wrong?',
  'plan-hand-picked-on-mask':
    'hand-picked station {code} lies in {stratum} on ground that a mask takes off; move it, or change the mask',
  'plan-hand-picked-unnamed':
    'a hand-picked station has no code[ ({position})]; write --hand-picked "H1: 17 45.3 S 177 24.0 E", or a CSV file with a code and a position in every row',
  'plan-name-missing': '{what} has no name; a plan is found again by it',
  'plan-survey-has-plan':
    '{survey} has another plan already: {plans}; stations of the two may bear the same codes, and the report takes the one drawn last; replace that one with --accept if this is the same survey drawn again',
  'plan-belts-dropped':
    'the {belts} {belts:belt|belts} laid at {stations} {stations:station|stations} of the old draw went with it; lay them again (“slateline plan lay {plan}”), and take the old waypoints off the receiver',
  'plan-fixed-none':
    'no station of {survey} can be visited again: none was drawn at random, has a position and lies in a stratum of the plan',
  'plan-fixed-unknown': '{survey} has no station {codes}; check the codes',
  'plan-fixed-left-out': 'not visited again, of {survey}: {codes} ({reason})',
  'plan-fixed-more-than-planned':
    '{stratum}: {fixed} stations of the earlier survey lie there; {stations} of them {stations:was|were} taken by lot, as many as are planned',
  'plan-balance-poor':
    '{stratum}: {share} of simple random draws would be spread as well as this one; another seed is another draw, but choose no seed by its map: say so if you do',
  'plan-masks-dropped': '{stratum}: {areaHa} ha ({share}) taken off before the draw: {masks}',
  'plan-borders-movable':
    'the borders of {strata} are not frozen; freeze them before the first station (“slateline strata --freeze”), so that they cannot follow the animals',
  'plan-protocol-unknown':
    'there is no protocol "{name}" in this book[; did you mean {nearest}?][; known are {known}]',
  'plan-layout-not-laid':
    'only belts in series are laid; the protocol has {layout}: go to the position of the station and lay them there',
  'plan-belts-unknown':
    'it is not known how a station is worked: give {missing}, or a protocol of the book with --protocol',
  'plan-bend-unclear':
    'a bend at belt {belt} of station {code} cannot be laid; name a station of the plan and a belt from 2 to {belts}',
  'plan-belts-do-not-fit':
    '{code} ({stratum}): no bearing keeps all belts on the ground; the best, {bearingDeg}° true, has {insideM} of {laidM} m inside. Let the series turn (--turn 20), shorten the belts, or replace the station, before the boat leaves',
  'plan-start-off-ground':
    '{code} ({stratum}): the start itself is not on its ground any more: the map was changed after the draw',
  'plan-belts-narrow-way': '{code}: {slackDeg}° off the bearing a belt leaves its ground; steer carefully',
  'plan-bearing-free':
    'at {stations} {stations:station|stations} (room: any) every bearing was as good, and north was taken; --along takes the contour instead',
  'plan-model-outdated':
    'the compass model {model} holds from {validFromYear} to {validToYear}; for {date} its declination is a guess',
  'plan-weak-field':
    '{code}: the earth’s magnetism is weak there; the compass cannot be trusted, steer by positions',
  'plan-not-laid': 'no belts are laid yet: “slateline plan lay” does it',
  'waypoint-far':
    'waypoint {waypoint} bears the name of {code} and lies {distanceM} m from it (more than {nearM} m): the wrong place, or the wrong name?',
  'waypoint-as-sent':
    'these waypoints stand on their planned place to the metre: {codes}. They are the points that were sent to the receiver, not marks of where the boat was, and are not written as positions; if somebody did mark there, type the position',
  'waypoint-without-station':
    'waypoint {waypoint} at {position} belongs to no station[; the nearest is {nearest}, {distanceM} m away]',
  'waypoint-station-has-position':
    '{code} has a position already, {distanceM} m from the waypoint; it was kept (--overwrite takes the waypoint)',
  'waypoint-station-not-entered': 'not in {survey} yet, so nothing was written for them: {codes}',
  'waypoint-none': 'there is neither a waypoint nor a track in this file',
} as const;
