/** What is found wrong with areas on the map, and with stations held against maps and plans. */

import type { MapFindingCode } from '../../survey/map-area.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';

/** `{area}` is the name of the area, `{piece}` which border of it: "piece 2, hole 1". */
const findings = {
  // reading
  'map-not-understood':
    'this file is no {format} that can be read[ ({detail})]; save it again: areas as GeoJSON, KML or GeoPackage on WGS84, waypoints as GPX',
  'map-too-large':
    'this map is too large[: {size}, where {limit} are read]; split it, or simplify the borders',
  'map-with-entities':
    'this file declares entities, which could read other files or swell without end; save the map again without them',
  'other-datum':
    '[area {area}: ]the positions are on {datum}, not on WGS84, which can move a station by hundreds of metres; save the map again on WGS84 (EPSG 4326)',
  'map-in-metres':
    'the positions of this map are no degrees (the first is {x}, {y}): they look like metres of a projection such as UTM, and the map does not say which; save it again on WGS84 in degrees (EPSG 4326)',
  'no-area-in-map': 'there is no area in {what}; strata, zones and masks are polygons',
  'not-an-area':
    'left out: {count} {kind}; only polygons have an area: is one of them a border that was never closed?',
  'position-not-understood':
    '[area {area}: ][{piece}, ][point {point}: ]a position here is not two numbers of degrees that can be (map files have longitude first); mend it, or draw that border again',
  // one area
  'open-ring':
    '[area {area}: ][{piece}: ]the border ends {gapM} m from where it began; it was closed with a straight line: is that right?',
  'too-few-points':
    '[area {area}: ][{piece}: ]a border needs three different points to hold ground, and this one has {points}',
  'repeated-points':
    '[area {area}: ][{piece}: ]points that stand twice in a row: {count}; nothing is lost by them',
  'self-crossing':
    '[area {area}: ][{piece}: ]the border crosses itself {times}[, first at {at}], so that inside and outside cannot be told; untie it there',
  'hole-outside':
    '[area {area}: ][{piece}: ]this hole lies outside the border it should be cut from ({points} of its points do); move it, or make it a piece',
  'hole-overlap':
    '[area {area}: ][{piece}: ]{areaHa} ha of this hole lie outside the border it is cut from, or in another hole; they would be taken off the area though they are no part of it: draw the hole inside, and one hole where two meet',
  'pieces-overlap':
    '[area {area}: ]pieces lie over each other by {areaHa} ha in all (most of all pieces {first} and {second}), which would be counted twice; join them into one piece',
  'latitude-impossible':
    '[area {area}: ][{piece}, ][point {point}: ]a latitude of {latitude} cannot be: latitudes end at 90 degrees; are latitude and longitude exchanged? Map files have longitude first',
  'swapped-coordinates':
    '[area {area}: ][{piece}, ][point {point}, ][{at}: ]latitude and longitude stand exchanged[: {awayKm} km from the rest, and {exchangedKm} km when turned round]; map files have longitude first: exchange them',
  'far-from-neighbours': '[area {area} ]lies {awayKm} km from the rest of the map; is it in the right place?',
  sliver:
    '[area {area}: ][{piece}: ]this piece is {widthM} m wide on average ({areaHa} ha), too thin for a belt; is it a slip of the pen?',
  'area-typed-differs':
    'stratum {area} was typed as {typedHa} ha, but its polygon has {mapHa} ha, {factor} times that[ (typed in {unit}?)]; the map stands: correct the table, or the map',
  // areas together
  overlap:
    '{area} and {other} both claim {areaHa} ha[ (give or take {errorHa})]; every place belongs to one of them: redraw the border between them',
  'overlap-sliver':
    '{area} and {other} overlap by a strip {widthM} m wide on average ({areaHa} ha); their common border was drawn twice',
  'gap-sliver':
    'a strip {widthM} m wide on average ({areaHa} ha)[ at {at}] lies between the areas and belongs to none',
  'name-repeated':
    'the name “{name}” stands at two areas; make one area of several pieces of them, or give each a name of its own',
  'area-without-name':
    'areas without a name: {count}; name them in the map, or say with --name-field which field holds the names',
} as const satisfies Record<MapFindingCode, string>;

export const mapWords = {
  ...findings,
  'area-name-near':
    'the map says “{value}”, the book has “{suggestion}”; write the name alike in both, or the stations stay without a map',
  'stratum-frozen':
    'stratum {area} was frozen on {frozenOn}[ with {wasHa} ha]; this map would make it {becomesHa} ha: after the freeze only with --accept "who: why"',
  'stratum-all-masked': 'the masks take all {wholeHa} ha of stratum {area}; nothing is left to draw from',
  'strata-drawn-late':
    'the borders of {areas} are drawn on {today}, after the first station of {survey} ({firstDate}): drawn after seeing results; every answer by stratum should say so',
  'area-from-map':
    'stratum {stratum} was typed as {typedHa} ha and its map has {mapHa} ha; the area of the map stands',
  'station-outside-stratum':
    '{value}[ ({chart})] lies {distance} outside stratum {stratum}[, in {inside}][, in {none} of the strata on the map]; which is right, the position or the stratum[: is it {suggestion}][, or the position {correction}]?',
  'station-outside-zone':
    '{value}[ ({chart})] lies {distance} outside zone {zone}[, in {inside}]; which is right, the position or the zone[: is it {suggestion}]?',
  'station-on-mask':
    '{value}[ ({chart})] lies {distance} inside {mask}, which was taken off the map as {reason}; is the position right, or the map?',
  'station-at-border':
    '{value} lies {where}; a receiver cannot tell such metres, and nothing needs to be done',
  'station-not-in-plan':
    'this station is {value} in plan {plan}; was it drawn, or chosen on the day[: is it {suggestion}]?',
  'hand-picked-marked-random':
    'this station is marked {value}, but {why}; a station once chosen by hand stays {suggestion}: correct the mark, or the plan',
} as const satisfies Partial<Record<ProblemCode, string>>;
