/** Words of the methods page on range, season and regions. */
export default {
  "methods.range-occupancy":
    "The area of occupancy is 4 km² for each 2 km square with a record, the reference scale of IUCN (Standards and Petitions Committee 2024, Guidelines, version 16). A record good to 10 km only fills no 2 km square, so the figure is a minimum; the 10 km squares in which no record reaches 2 km are counted beside it.",
  "methods.range-origin":
    "Squares are those of each territory’s grid, counted from its origin: another origin would give other squares, and another figure.{several, select, yes { Over several grids squares are added, and where two meet they can overlap.} other {}}",
  "methods.range-extent":
    "The extent of occurrence is the area, on the WGS84 ellipsoid (Karney 2013), of the smallest convex polygon round the corners of the occupied 2 km squares and of the 10 km squares in which no record reaches 2 km. Its corners are found in a gnomonic projection about the middle of all squares, in which the polygon’s sides, geodesics, are straight. It holds sea and land where nobody looked, and one stray record can double it. Where it is smaller than the area of occupancy it is set equal, and the table says so.",
  "methods.range-counts":
    "A record counts that is used and established, in provisional years too: a record is a record. Left out are records whose establishment is {left}, by the scheme’s setting.",
  "methods.range-thresholds":
    "Thresholds of criterion B (IUCN 2012) are evidence, and no assessment. A figure is set beside the smallest threshold it is strictly below: 100, 5,000 or 20,000 km² for the extent (B1), 10, 500 or 2,000 km² for the area of occupancy (B2). A category needs two of three further conditions: few or severely fragmented locations, continuing decline, extreme fluctuation. Within one country or island it is given under regional guidance only. An extent over the sea between two territories is for one unit of assessment only where the unit is both.",
  "methods.season-dates":
    "A season is given by the days by which a tenth, a quarter, half, three quarters and nine tenths of the records or visits had been made: quantiles of type 8 (Hyndman and Fan 1996). There is no earliest date, for it moves with the number of records alone.{castes, select, yes { Each caste stands for itself, and records that state none are a class of their own, never shared out.} other {}} Only records dated to one day count. Specimens, literature and finds of nests do not: they tell where it lived, not when it is about. With fewer than {records} records or visits no date is given.",
  "methods.season-visits":
    "A visit counts once, however many records it left. Evenly weighed, a visit counts for the days of its third of a month over the visits anybody made in it, as though every day of the year had been visited equally often; thirds with fewer than {visits} visits have no such weight. Visits exist only where something of the group was seen: what they give is a share of visits, not numbers of animals.",
  "methods.season-interval":
    "The interval of the median takes dates as the sampling unit, since what is recorded on one day shares its weather: the exact binomial one for the size that tells as much (Woodruff 1952, Korn and Graubard 1998).",
  "methods.season-shift":
    "A shift is told in days a decade, from everyday recording of settled years with {visits} visits or more, where there are {years} such years. The quantile regression of the day on the year (Koenker and Bassett 1978) allows for latitude, territory and caste, and evens out when in the year people went recording and stated castes, about five years at a time; latitude is that of the 10 km square as shown. Its interval comes of 400 draws of whole years, which share their weather (Andrews 2002), with Student’s distribution for the number of years. Beside it stands the median slope (Theil 1950, Sen 1968) through the years’ medians, with the same allowed for and as recorded; the last moves with where and when people record.",
  "methods.season-silence":
    "No shift is told where castes are about at different times and fewer than half of the visits state one, where more than a fifth of the visits have no square to tell their latitude, where too few years were visited all through its season (early ones that were not are left out), or where latitude or caste changed so steadily with the years that they cannot be told apart. Height above the sea and generations are not allowed for.",
  "methods.regions-stated":
    "A region a record states beats its square: whoever was there knows the region better than a square does. A check asks where the two cannot both be right. A record that fills no square still counts for the region it states.",
  "methods.regions-square":
    "Where none is stated the finest square of the record counts, if it touches one region only. A square touches a region that has at least 4,000 m² in it, 0.1 % of a 2 km square; less is taken for the drawing of a line. What lies in no region, the sea as a rule, counts for none.{land, select, yes { The squares with land of a region are those of the scheme’s list.} other {}}",
  "methods.regions-boundary":
    "A record of a square that touches two regions, and that states neither, is not assigned. It makes no first year in either and counts once, in the row “not assigned”; so a region’s list can lack what was recorded on its boundary. Records shown coarser on purpose are put in a region by the square that is shown, never by the region they state.",
  "methods.regions-sums":
    "Records add up over the regions and those not assigned. Squares and species do not: two records of one square can state two regions.",
} as const;
