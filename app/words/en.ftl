### English, which the other languages are held against: what is missing there, or has other arguments or
### variants, is an error of the build. A comment says what a message is for.
###
### Here stands what is said of roads, trucks and plans, whoever says it; what only the page says stands in
### `page/`. Arguments are texts, written by `format`, but for these (type, or path of an enum):
###
### $at-start bool
### $axle-place solver::truck::AxlePlace
### $axles u8
### $bad usize
### $because solver::plan::Governs
### $brake solver::truck::BrakeKind
### $count usize
### $entry solver::limits::Entry
### $foreign &solver::road::Foreign
### $from-terrain bool
### $governs solver::plan::Governs
### $hairpins usize
### $how solver::plan::ChangeHow
### $input solver::study::Input
### $lead solver::day::Lead
### $less bool
### $line usize
### $load solver::day::Load
### $lowest bool
### $needed bool
### $number usize
### $off bool
### $partly-unassessed bool
### $points usize
### $poor bool
### $preset solver::truck::Preset
### $previous usize
### $refusal solver::road::Refusal
### $rows usize
### $runs usize
### $service-brakes solver::day::ServiceBrakes
### $some usize
### $surface solver::day::Surface
### $swapped bool
### $transmission solver::truck::Transmission
### $unassessed solver::road::Unassessed
### $units crate::format::Units
### $unreadable usize
### $verdict solver::plan::Verdict
### $why solver::day::Withheld

## Words that stand in a file saved for a device.

# With every advice: what it is not, and who comes first.
mark-caution = Worked out from entries and recorded heights, which contain errors. Not permission to descend: posted signs, local law and the vehicle maker's limits come first.
# By here, or from here on.
by-here = { $how ->
    [down] by here
   *[up] from here on
}
# A crest by the number of its descent.
crest-number = Crest { $number }
# To hold this speed.
hold = hold { $speed }
# At a foot.
mark-foot = Foot { $number }
# At a foot, and the gear that is next.
# Arguments: $number, $gear u8
mark-foot-then = Foot { $number }, then gear { $gear }

## Times.

# A time that is nearly none.
less-than-a-minute = less than a minute
# A time below an hour.
minutes = { $count } { $count ->
    [one] minute
   *[other] minutes
}
# A longer one.
# Arguments: $hours usize, $count
hours-and-minutes = { $hours } h { $count } min

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

# By which place a gear is in, or from which it may be.
by-place = { $how ->
    [down] by { $at }
   *[up] from { $at } on
}
# The even grade that the hill asks for as much as, and the stretch on which it asks for most.
asks = an even { $grade }. The hill asks for most over { $length } from { $from }
# To engage the gear before the crest, or before setting off, and how far to keep it.
engage = Engage the gear before { $at-start ->
    [true] setting off
   *[false] the crest
} and keep it to the foot at { $foot }.
# The same of the first of several gears, and that the others are in by their places.
engage-first = { $at-start ->
    [true] Engage the first gear before setting off. Change down before the place named, up only behind it.
   *[false] Engage the first gear before the crest. Change down before the place named, up only behind it.
}
# That the gear, or the lowest of several, is chosen for what the hill asks for.
chosen = { $lowest ->
    [true] The lowest gear
   *[false] It
} is chosen as for { $asks }.
# That this rules it out.
ruled-out-by = What rules it out is { $asks }.
# By how much the brakes get warmer.
brakes-warmer = brakes { $by } warmer
# At the end of a place: that the heights may be off by as much.
doubted = , in doubt: the heights may be off by as much
# So many more places.
and-more = and { $count } more
# Places where the service brakes are needed, or only touch.
brakes-at-places = The service brakes { $needed ->
    [true] are needed
   *[false] touch
} at: { $places }.
# That steep bits cannot be ruled out, and what follows.
in-doubt = The gear holds it on the average. Short steep bits of up to { $grade } cannot be ruled out: keep the service brakes ready.
# What happens between legs.
between-legs = Between them the truck slows for the next gear, or takes up speed.
# Before the advice of the slowest leg.
slowest-leg = The slowest part
# There is none.
no-untouched = No gear holds every recorded pitch by itself.
# Which of `count` descents decides, before what is said of it.
deciding = { $count ->
    [one] The descent
   *[other] Hardest descent ({ $number } of { $count })
}
# The sentence that decides as far as the crest: gear, stage and speed there, without the full stop.
# Arguments: $number, $count, $gear, $stage, $speed, $crest
decided = { deciding }, from <strong>{ $crest }</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
# The same where the road starts in that descent.
# Arguments: $number, $count, $gear, $stage, $speed
decided-at-start = { deciding }, from the <strong>start of the road</strong>: <strong>{ $gear }</strong>, <strong>{ $stage }</strong>, <strong>{ $speed }</strong>
# The whole sentence where no speed is safe.
# Arguments: $number, $count, $crest
none-decided = { deciding }, from <strong>{ $crest }</strong>: <strong>no safe speed found</strong>. As entered, do not take this truck down it.
# The same where the road starts in that descent.
# Arguments: $number, $count
none-decided-at-start = { deciding }, from the <strong>start of the road</strong>: <strong>no safe speed found</strong>. As entered, do not take this truck down it.

## Words of the reasons.

# The question why the speed is not higher, or where none is `held`, why none is safe.
# Arguments: $held bool
why-label = { $held ->
    [true] Why not faster
   *[false] Why no speed is safe
}
# Faster, the service brakes would not stay untouched, which the day asks for.
untouched-governs = Your choice under Day. Faster, a recorded pitch would need the service brakes.
# What governs this advice; the limit, the reserve and the heat limit entered.
# Arguments: $governs, $verdict, $off, $limit, $reserve, $heat-limit
governed-by = { $governs ->
    [speed-limit] The speed limit entered, { $limit }.
    [posted] A limit posted on the way. The whole descent keeps to it, or a faster gear would not hold there.
    [engine-speed] The highest allowed engine speed.
    [control] { $off ->
        [true] { $verdict ->
            [retarder-holds] Control by the engine alone. A faster gear would not keep { $reserve } in reserve, or a steep bit would overwork the service brakes.
            [little-in-reserve] Control by the engine alone. A faster gear would not hold it at all. Even here { $reserve } in reserve is not there.
            [needs-service-brakes] Control by the engine alone. Faster, it would carry less than half, whatever the brake heat.
           *[no-safe-speed] Control by the engine alone. Faster, it would carry less than half, whatever the brake heat.
        }
       *[false] { $verdict ->
            [retarder-holds] Control. In a faster gear the retarder lacks { $reserve } in reserve, or a steep bit overworks the service brakes.
            [little-in-reserve] Control. No speed keeps { $reserve } in reserve. Faster, the retarder would hold still less.
            [needs-service-brakes] Control. Engine and retarder do not hold it alone. Faster, they would carry still less.
           *[no-safe-speed] Control. Engine and retarder do not hold it alone. Faster, they would carry still less.
        }
    }
    [curve] Curves. Between them the truck could not get faster, or its gear would be too high in the slowest curve.
    [grip] Grip of the driven axles on this surface.
   *[heat] Brake heat. Faster, a hard stop would pass { $heat-limit }.
}
# What rules out the slowest speed tried; how hot the brakes would be after a hard stop, and their limit.
# Arguments: $because, $fitted bool, $slowest, $reached, $limit
no-speed-because = { $because ->
    [speed-limit] Even the slowest speed tried, { $slowest }, is above the speed limit entered.
    [posted] Even at { $slowest }, the slowest speed tried, the gear would not suit the lowest posted limit.
    [engine-speed] Even at { $slowest }, the slowest speed tried, the engine would turn too fast.
    [control] { $fitted ->
        [true] Even at { $slowest }, the slowest speed tried, the retarder does not hold it.
       *[false] Without a retarder the engine does not hold it, even at { $slowest }, the slowest speed tried.
    }
    [curve] Even at { $slowest }, the slowest speed tried, every gear is too high for the slowest curve.
    [grip] Even at { $slowest }, the slowest speed tried, the driven axles lack the grip to hold it.
   *[heat] Even at { $slowest }, the slowest speed tried, a hard stop would heat the brakes to { $reached }. The limit is { $limit }.
}
# How much force a hill asks for at the wheels, the most that engine and retarder hold, and at which speed.
force-falls-short = The hill needs { $asks } at the wheels. The truck holds { $holds } at most, at { $speed }.
# What follows where that cannot be changed.
else-another-road = Unless that can be changed, take another road.
# A note of the plan.
note-stages-withheld = { $why ->
    [snow] No retarder stage is advised on snow or ice: the driven axles could break away. Guidance differs: some makers allow the weakest stage. The cautious reading is taken. Gears and speeds here count on the unfuelled engine alone. In doubt do not start down: wait until the road is treated.
    [ice] No retarder stage is advised on snow or ice: the driven axles could break away. Guidance differs: some makers allow the weakest stage. The cautious reading is taken. Gears and speeds here count on the unfuelled engine alone. In doubt do not start down: wait until the road is treated.
    [empty-in-the-wet] No retarder stage is advised empty on a wet road: the driven axles carry little and could break away. Guidance differs: some allow weak stages. The cautious reading is taken. Gears and speeds here count on the unfuelled engine alone.
   *[no-trailer-in-the-wet] No retarder stage is advised without a trailer on a wet road: the driven axles carry little and the tractor could spin. Guidance differs: some allow weak stages. The cautious reading is taken. Gears and speeds here count on the unfuelled engine alone.
}
# On a wet road.
note-wet-cap = Wet road: the retarder counts with at most half the grip of the driven axles. If the driven wheels slip, go a stage down. Some guidance says off altogether.
# A box that chooses gears by itself has to be held in the one told.
note-hold-by-hand = This gearbox would choose gears by itself. Set it to hold, and engage the gear by hand before each crest.
# The gear told lies where the box shifts up by itself.
note-shifts-up-by-itself = This gearbox shifts up by itself when the engine turns too fast. Then the retarder lets go. The speeds told stay below that.
# The file begins on a hill.
note-starts-in-descent = This road starts on the hill. What the brakes went through before is not known.
# A descent has stretches that are not assessed.
note-partly-unassessed = Heights are missing or wrong on a part of the road. No advice there.
# The heights are poor.
note-poor-heights = The heights of this file are poor: grades are a rough guide only. Check them against the signs.
# The brakes get hottest off the descents, at this place.
note-hot-elsewhere = At { $place }, away from the descents, a hard stop would take the brakes past their limit. Go slower there.
# The truck cannot climb what the road climbs.
note-cannot-climb = At full load this truck cannot climb a part of this road in any gear.

## Short answers, of five words at most: one line beside a question.

# The other choice comes to the same.
short-same = the same
# No speed is safe.
short-no-safe-speed = no safe speed
# A verdict that is worse than that of the plan itself.
short-verdict = { $verdict ->
    [retarder-holds] held
    [little-in-reserve] little in reserve
    [needs-service-brakes] service brakes
   *[no-safe-speed] no safe speed
}
# Gears of several legs, the lowest and the highest.
# Arguments: $from u8, $to u8
short-gear-range = gears { $from }–{ $to }
# The mass asked for cannot be entered.
short-out-of-range = mass out of range
# What keeps the speed from being higher.
short-governed = { $governs ->
    [speed-limit] limit entered
    [posted] posted limit
    [engine-speed] engine speed
    [control] control
    [curve] curves
    [grip] grip
   *[heat] brake heat
}
# What the person chose under Day keeps it so.
short-own-choice = your choice
# Why no speed is safe.
short-no-speed = { $because ->
    [speed-limit] limit entered is lower
    [posted] posted limit is lower
    [engine-speed] engine too fast
    [control] too little retarding
    [curve] gears too high in curves
    [grip] too little grip
   *[heat] brakes too hot
}
# The retarder fails: the service brakes hold the truck to the foot.
short-brakes-hold = brakes hold it
# The retarder fails: stop, which is possible anywhere.
short-stop-at-once = stop at once
# The retarder fails: stopping is possible as far as this place.
short-stop-before = stop before { $place }
# The retarder fails: nowhere would a stop keep the heat limit.
short-no-stop = no safe stop
# In so many of all runs.
# Arguments: $some, $runs
short-count-of = { $some } of { $runs }
# Curves slower than the descent, and the speed of the slowest.
# Arguments: $count, $all-hairpins bool, $speed
short-curve-count = { $all-hairpins ->
    [true] { $count ->
        [one] { $count } hairpin
       *[other] { $count } hairpins
    }
   *[false] { $count ->
        [one] { $count } curve
       *[other] { $count } curves
    }
}, { $speed }
# No way down was found.
short-none-found = none found
# No gear does.
short-no-gear = no gear does
# A time.
short-minutes = { $minutes } min
# The retarder would hold it with brakes no warmer than this at the crest.
short-cool = brakes below { $at }
# The retarder would hold it at this mass.
short-mass = at most { $mass }
# The retarder would hold it with so much more retarding.
short-retarding = { $share } more retarding
# The retarder holds it with less in reserve than asked for.
short-reserve = { $kept } in reserve
# No change in reach helps.
short-no-change = nothing in reach

## What a language says of itself.

# Between a label and what it is the label of.
colon = :{ " " }
# Between a line and what is said of it.
semicolon = ;{ " " }
# The tag of the language.
tag = en
# Between the whole and the tenths of a number.
decimal-sign = .
# Between groups of three digits; where a comma stands before decimals it is a blank that does not break, since a point there is read as a decimal point by whoever is used to one.
thousands-sign = ,
# Between two ends: “12.2 to 17.3 km”.
number-to = to
# Where no one of the trade has read the translation yet: that, and what to do in doubt. Empty where someone has.
translation-unread = { "" }

## Words of the plan: verdicts, descents.

# A verdict.
verdict = { $verdict ->
    [retarder-holds] retarder holds it
    [little-in-reserve] holds, little in reserve
    [needs-service-brakes] needs service brakes
   *[no-safe-speed] no safe speed found
}
# The engine alone holds, with the reserve.
engine-holds = engine alone holds it
# The engine alone holds, with less than the reserve.
engine-holds-little = engine alone holds it, little in reserve
# It is held on the average: short steep bits cannot be ruled out.
holds-on-average = holds it on the average
# It is held, and the service brakes touch on short steep bits.
brakes-touch = holds it, service brakes touch
# A heat step.
# Arguments: $step solver::plan::HeatStep
heat-step = { $step ->
    [cool] cool
    [warm] warm
    [hot] hot
   *[over-limit] over the limit
}
# “stage 3”, by its number, from 1.
stage-number = stage { $number }
# “retarder off”.
retarder-off = retarder off
# The same among stages.
off = off
# Legs from the slowest to the fastest: their gears, the stage of the slowest, their speeds.
# Arguments: $from u8, $to u8, $stage, $slow, $fast
in-legs = gears { $from } to { $to }, { $stage } in the lowest, { $slow } to { $fast }
# The same by its number.
# Arguments: $number u8
gear-number = gear { $number }
# Where the road has no descent.
no-descent = { $partly-unassessed ->
    [true] On the parts that could be assessed, no hill asks for a gear or a retarder stage.
   *[false] Driven this way, no hill on this road asks for a gear or a retarder stage.
}
# In place of gear, stage and speed.
no-safe-speed = no safe speed found
# Label of the other way to use the service brakes: what the day does not allow now.
other-mode-label = { $service-brakes ->
    [in-reserve] Short applications allowed
   *[may-snub] Service brakes for stopping only
}
# The other way comes to the same.
same-choice = The same gear, stage and speed.
# What the other way comes to, and the time that it takes more, s; less where negative.
# Arguments: $choice, $less, $time
choice-apart = { $choice }; { $time } { $less ->
    [true] less
   *[false] more
}.
# That mass is more than can be entered.
mass-out-of-range = That mass is out of range.
# The hottest brakes, the same after one hard stop, and the limit.
brakes-at = About { $hottest } at the hottest; { $after-stop } after one hard stop (limit { $limit }).
# From which speed down to which, s of braking and s between, and how often in all.
# Arguments: $from, $to, $on, $off text, $count u32
snub-between = Short applications: brake from { $from } to { $to } in about { $on } s, then release. Again after about { $off } s where the hill asks for most; about { $count ->
    [one] 1 application
   *[other] { $count } applications
} in all. Do not drag the brakes.
# Parked use.
parked = Plan while parked. Not for use while driving.
# Cautions, each a sentence.
cautions =
    .aid = A planning and teaching aid: no instruction, and no approval of a road.
    .worked-out = Worked out from your entries and from recorded heights, which contain errors.
    .unseen = It cannot see brake adjustment, tyres, surface, weather, traffic, closures, or how the load sits.
    .first = Posted signs, the law, your employer’s rules and the maker’s limits come first.
    .means = The service brakes remain the means to stop.
    .doubt = In doubt: stop at the top, go slower, or take another road.

## Words of one descent's details, and of its table.

# That no speed keeps the limits, and what follows from that.
no-advice = No speed was found that keeps the limits. As entered, do not take this truck down it.
# How much of what is needed is missing at full stage.
falls-short = At full stage { $share } of what the hill asks for is missing: the service brakes must help.
# How much more than needed there is at full stage.
more-than-asked = At full stage { $share } more than the hill asks for.
# Gear and stage of an advice, its speeds, the sentence of its reserve, and the time it takes.
# Arguments: $gear u8, $off, $stage, $speed, $engine-speed, $reserve, $time
advice-in-full = Gear { $gear }, up to { $stage }, { $speed } at { $engine-speed }. { $reserve } { $time } from crest to foot.
# Where it eases, and over which length.
eases-over = { $span }: flat or rising for { $length }. Do not shift up: the descent goes on.
# The mean grade.
mean-grade = { $grade } on average.
# The steepest grade over a length, where it begins, and what is to be doubted of it.
steepest-over = { $grade } over the steepest { $length }, from { $from }{ $doubt }.
# That the heights do not hold over so short a length, at the end of a sentence.
too-short-for-heights = ; too short for these heights
# How many curves and hairpins ask for less than the speed.
curve-count = { $count ->
    [one] { $hairpins ->
        [0] 1 curve asks for less than this speed
       *[other] 1 hairpin asks for less than this speed
        [one] 1 hairpin asks for less than this speed
    }
   *[other] { $hairpins ->
        [0] { $count } curves ask for less than this speed
        [one] { $count } curves ask for less than this speed, 1 of them a hairpin
       *[other] { $count } curves ask for less than this speed, { $hairpins } of them hairpins
    }
}
# The slowest of them: its speed, where, to which side, its radius.
slowest-curve = The slowest: at most { $speed } at { $at }, { $side }, radius about { $radius }.
# What is not known of curves.
curves-estimated = Radii are estimates from the track; banking, sight and surface are not known.
# To the left or to the right.
# Arguments: $left bool
side = { $left ->
    [true] to the left
   *[false] to the right
}
# Gear and speed that climb it.
# Arguments: $gear u8, $speed
climbs-in = At full load it climbs in gear { $gear } at about { $speed }. The gear to go down is often lower.
# No gear climbs it.
climbs-in-none = No gear climbs it at full load.
# How warm the brakes arrive at the crest.
brakes-arrive = Brakes arrive at the crest with about { $heat }.
# Grade and height for which the table is.
table-of = What each gear and stage does on { $grade } at { $height } above the sea, without throttle and without the service brakes
# It holds back more than needed.
more-than-needed = more than needed
# It gets faster.
overruns = overruns
# From which speed on.
above-speed = above { $speed }
# It is not to be used.
not-usable = not usable
# Why a cell is not usable.
# Arguments: $why solver::motion::Unusable
unusable = { $why ->
    [slippery] too slippery
    [grip] too little grip
    [cut-out] cut out
   *[unlocked] converter open
}
# A fall, and how much of it is not assessed.
fall-in-part = { $all } (of which { $blank } not assessed)
# That no work is counted on what is not assessed.
no-work-counted = On the { $length } that are not assessed no braking is counted.
# The time, the fall, the work of retarder and engine, and that of the service brakes.
whole-way = Whole road: { $time }, { $fall } down. Retarder and engine take { $holding }, the service brakes { $service }.
# The slowest speed on a climb.
slowest-climb = Slowest on a climb: about { $speed }.
# Less than this share or quantity, in that sentence.
less-than = under { $share }
# About this quantity, in that sentence.
about = about { $quantity }
# The share of the braking work that the service brakes take, and the fuel.
share-and-fuel = The service brakes do { $share } of the braking. Fuel: { $fuel }.
# What the answers in the table mean: a word of it, and its meaning.
table-legend =
    .speed = a speed
    .speed-means = the truck settles there, with the engine speed below it
    .more = more than needed
    .more-means = it slows down: a weaker stage or a higher gear would do
    .overruns = overruns
    .overruns-means = it gets faster until the engine turns too fast: use a lower gear or the service brakes
    .not-usable = not usable
    .not-usable-means = for the reason given
    .one-gear = in one gear
    .one-gear-means = any speed from where the strongest stage settles up to the top of the gear can be held, by changing stages

## Words of what follows from a plan: what would change it, how sure it is, what if.

# At which mass it would be held.
light-enough = At { $mass } or less the retarder would hold it with the reserve.
# At none.
no-lighter-load = No lighter load would change that.
# With how much more retarding.
more-retarding = With { $share } more retarding than this truck has, it would be held with the reserve.
# Which reserve can be kept in place of the one asked for.
reserve-kept = As it is, at most { $kept } in reserve can be kept, not { $asked }.
# With brakes how cool at the crest.
cool-enough = With brakes no warmer than { $at } at the crest the limit would be kept: let them cool first.
# Where the rise begins, and with which speed.
meets-rise = Held to the foot like this, it enters the rise at { $at } with about { $speed }. Do not release early for more.
# What was done.
driven-so = Driven { $runs } times with grades, mass, resistance, wind, retarder and brakes each a little off.
# In none of so many runs.
in-none = in none of { $runs }
# In all of them.
in-all = in all { $runs }
# In some of them.
in-some = in { $some } of { $runs }
# In how many the retarder alone held the speed.
speed-held = The retarder alone held the speed { $of }.
# What is not counted there.
touches-left-out = Places where the service brakes are touched are left out.
# In how many the brakes kept the limit.
limit-kept = The brakes, one hard stop included, kept the limit { $of }.
# Between which temperatures the brakes were in nine of ten.
nine-of-ten = In nine of ten the brakes were between { $cool } and { $hot } after a hard stop.
# What that spread comes from.
spread-from = Most of that spread comes from { $inputs }.
# An input as it stands in that sentence.
input = { $input ->
    [grade] the grades
    [mass] the mass
    [rolling] rolling resistance
    [drag] air drag
    [retarder] what the retarder gives
    [wind] the wind
    [brakes-at-start] the brakes at the start
   *[cooling] how much heat the brakes store and give off
}
# Between two of them.
and-then = , then{" "}
# Braking hard stops it from anywhere.
stops-anywhere = Braking hard within two seconds stops the truck within the heat limit from anywhere on the way.
# It does so as far as this place, and not behind it.
stops-until = Braking hard within two seconds stops the truck within the heat limit as far as { $until }, not beyond.
# It does so nowhere.
stops-nowhere = Not even at the crest would a hard stop keep the heat limit.
# The service brakes hold it to the foot.
brakes-hold = The service brakes could also hold it at its speed to the foot within the limit.
# They do so from this place on.
brakes-hold-from = Only from { $from } on could the service brakes hold it to the foot at its speed. Before that, stop.
# They do so from nowhere.
brakes-hold-nowhere = The service brakes could not hold it to the foot: stop.
# From where on neither would do.
neither-from = From { $from } on, neither would keep the limit.
# An escape ramp: with which speed it would be met, rolling from where, and which length of bed that needs.
ramp-met = Escape ramp at { $at }. Rolling without brakes from { $lost-at }, the truck would meet it at about { $speed }. A level bed of loose round gravel would need about { $needs }.
# None is entered, and what that does not mean.
no-ramp-entered = No escape ramp is entered on this descent. That does not mean that there is none.
# What is taken to be the case with drums: at which temperature a cold stroke of 1¾ in reaches the limit of 2 in,
# and one of 1⅝ and 1½.
long-stroke = Taken here: the drum brakes of one axle group have a cold stroke of 1¾ in (44 mm). A size 30 chamber then reaches its limit of 2 in (51 mm) at { $at }. Above that they are not counted here, and the others are hotter. At 1⅝ in (41 mm) that is { $shorter }, at 1½ in (38 mm) { $short }.
# What is taken to be the case.
half-braked = If the disc brakes of one axle group braked only half as much, all others would get hotter.
# How hot a group would be after a hard stop, and whether that is over the limit.
# Arguments: $axles text, $heat, $over
out-of-adjustment = { $axles }: about { $heat } after a hard stop{ $over }.
# An axle group.
axles = { $axle-place ->
    [steer] Steer axle
    [drive] Driven axles
   *[trailer] Trailer
}
# From where on and with which speed it does.
full-stage-from = { $from }, at { $speed }
# Below which speed the service brakes do the rest, behind that.
rest-below = ; below { $speed } the service brakes
# The retarder alone does not do it.
brake-early = not enough: brake early
# In place of a speed: a stop.
standstill = stop
# Which way the service brakes need, and how warm they are then.
by-brakes-alone = { $way }, then about { $after }
# A curve of this radius.
curve-of = curve, radius about { $radius }
# A stop without a name.
place-to-stop = a place to stop
# A town without a name.
town = town
# What was done, before a colon.
driven-in-short = Driven { $runs } times with small errors
# The retarder held it and the brakes kept the limit each time.
held-and-kept = the retarder held it each time, and the brakes kept the limit.
# In which shares they did.
shares-held = the retarder alone held it in { $held }, the brakes kept the limit in { $kept }.
# At which engine speed it held with which power, what the data give, and the share.
held-with = At { $engine-speed } it held with { $power }; the truck’s data give { $assumed }. That is { $share } of what they say for the retarder.
# Why nothing was.
not-measured-no-such-stage = This truck has no such gear or stage.
# The stage told is off.
not-measured-off = With the retarder off nothing is told about it: enter a stage.
# The hill did not push the truck.
not-measured-not-pushed = That grade does not push this truck at that speed: enter a steeper stretch.
# Engine speed and road speed do not fit together; the engine speed that would.
not-measured-gauges-differ = In that gear at that speed the engine would turn at about { $engine-speed }: gear, axle ratio, tyre or one of the two figures is wrong.
# What follows cannot be.
not-measured-out-of-reach = The retarder would have to give { $share } of what its data say. Rather the mass, the grade or the stage is not as entered, or the service brakes helped.

## Words of places and posted limits along the road.

# What a kind of place is called.
# Arguments: $kind solver::road::PlaceKind
place-kind = { $kind ->
    [summit] summit
    [brake-check] brake check
    [escape-ramp] escape ramp
    [settlement] village or town
    [stop] stop, signals or junction
    [parking] parking or rest area
    [tunnel] tunnel
    [bridge] bridge
    [danger] danger
    [chain-up] chain-up area
    [quiet-zone] quiet zone
    [exit] exit
   *[other] other place
}
# A posted limit in the list of kinds.
posted-limit = posted limit

## Words of the entries of truck and day.

# A preset's name in these units.
preset = { $preset ->
    [five-axle36] { $units ->
        [metric] Five-axle combination, 36.3 t
       *[imperial] Five-axle combination, 80,000 lb
    }
    [five-axle40] { $units ->
        [metric] Five-axle combination, 40 t
       *[imperial] Five-axle combination, 88,200 lb
    }
    [five-axle40-both] { $units ->
        [metric] Five-axle combination, 40 t, hydrodynamic and engine brake
       *[imperial] Five-axle combination, 88,200 lb, hydrodynamic and engine brake
    }
    [five-axle-empty] { $units ->
        [metric] Five-axle combination, empty, 14.5 t
       *[imperial] Five-axle combination, empty, 32,000 lb
    }
    [six-axle44] { $units ->
        [metric] Six-axle combination, 44 t
       *[imperial] Six-axle combination, 97,000 lb
    }
    [drawbar40] { $units ->
        [metric] Rigid with drawbar trailer, 40 t
       *[imperial] Rigid with drawbar trailer, 88,200 lb
    }
    [refuse26] { $units ->
        [metric] Refuse truck, automatic, 26 t
       *[imperial] Refuse truck, automatic, 57,300 lb
    }
    [rigid18] { $units ->
        [metric] Two-axle rigid, 18 t
       *[imperial] Two-axle rigid, 39,700 lb
    }
    [tipper26] { $units ->
        [metric] Three-axle tipper, 26 t
       *[imperial] Three-axle tipper, 57,300 lb
    }
    [b-double] { $units ->
        [metric] Nine-axle double, 62.5 t
       *[imperial] Nine-axle double, 137,800 lb
    }
    [coach] { $units ->
        [metric] Intercity coach, 19 t
       *[imperial] Intercity coach, 41,900 lb
    }
   *[coach-converter] { $units ->
        [metric] Intercity coach, converter, 19 t
       *[imperial] Intercity coach, converter, 41,900 lb
    }
}
# A kind of retarder.
# Arguments: $kind solver::truck::RetarderKind
retarder = { $kind ->
    [none] no retarder
    [compression-release] engine brake
    [exhaust-valve] exhaust brake
    [hydrodynamic] hydrodynamic retarder
    [electromagnetic] electric retarder
    [compression-and-hydrodynamic] engine brake and hydrodynamic retarder
    [exhaust-and-hydrodynamic] exhaust brake and hydrodynamic retarder
    [compression-and-electromagnetic] engine brake and electric retarder
    [exhaust-and-electromagnetic] exhaust brake and electric retarder
    [engine-power-table] my own table, at the engine
   *[shaft-torque-table] my own table, at the shaft
}
# A gearbox.
transmission = { $transmission ->
    [manual] by hand
    [automated] automated
   *[torque-converter] converter
}
# A state of loading.
load = { $load ->
    [laden] loaded
    [empty] empty
   *[no-trailer] no trailer
}
# One axle group.
axle-group = { $axles } { $axle-place ->
    [steer] steer
    [drive] drive
   *[trailer] trailer
} { $axles ->
    [one] axle
   *[other] axles
}, { $brake ->
    [drum] drum
   *[disc] disc
}, { $share } % of the braking
# A surface.
surface = { $surface ->
    [dry] dry
    [wet] wet
    [snow] snow
   *[ice] ice
}
# A use of them.
service-brakes = { $service-brakes ->
    [in-reserve] for stopping only
   *[may-snub] short applications allowed
}
# A way down that may lead.
lead = { $lead ->
    [usual] fastest held
    [one-gear] one gear
   *[untouched] brakes untouched
}
# An entry of a truck that is outside its range.
truck-entry = { $name }: enter a value from { $range }.
# Name of an entry.
entry = { $entry ->
    [rated-power] Rated power of the engine
    [governed-speed] Governed engine speed
    [top-gear-speed] Engine speed in top gear
    [gross-mass] Gross mass
    [drive-axle-mass] Mass on the driven axles
    [rolling-radius] Rolling radius
    [wheel-inertia] Inertia of the wheels
    [rolling-resistance] Rolling resistance
    [drag-area] Drag area
    [displacement] Engine displacement
    [lowest-engine-speed] Lowest useful engine speed
    [highest-engine-speed] Highest allowed engine speed
    [axle-ratio] Axle ratio
    [axle-efficiency] Axle efficiency
    [retarder-peak-power] Retarding power
    [retarder-peak-speed] Engine speed of full retarding power
    [retarder-exponent] Rise of retarding power with engine speed
    [retarder-cut-out] Cut-out engine speed
    [rollover-threshold] Rollover threshold
    [air-temperature] Air temperature
    [brakes-at-start] Brake temperature at the start
    [headwind] Headwind
    [speed-limit] Speed limit
    [reserve] Reserve of holding force
    [heat-limit] Highest brake temperature
    [superelevation] Banking of curves
    [retarder-delay] Delay of the retarder after a shift
    [retarding-scale] Measured over assumed retarding
    [shaft-torque] Retarder torque at the propeller shaft
    [shaft-speed] Shaft speed of that torque
    [short-power] Short-term power of the retarder
    [short-time] Time of the short-term power
    [sustained-power] Sustained power of the retarder
    [sustained-speed] Engine speed of the sustained power
    [hot-share] Hot over cold torque
    [warm-up-time] Warm-up time of the retarder
    [lock-up-gear] Lowest gear with lock-up
    [lock-up-speed] Engine speed at which the lock-up opens
    [brake-check-stop] Time at each brake check
   *[shifts-up-speed] Engine speed at which the box shifts up by itself
}

## Words of the road: its quality, what was repaired, what was not assessed.

# The heights of both ends, in the direction of travel.
both-ends = driven from the end at { $start } to the end at { $end }
# That the road climbs between these heights in the direction shown, and the question whether it is to be driven down.
climbs-between = This road climbs from { $start } to { $end } in the direction shown. Coming down it?
# From a place on.
onward-from = from { $place }

## Why a truck or a truck file is not taken, but for entries out of their ranges.

# The mass on the driven axles is too large.
truck-drive-axle-mass = The mass on the driven axles is more than the gross mass; enter a smaller one.
# The lowest useful engine speed is not the lower one.
truck-engine-speeds = The lowest useful engine speed must be below the highest allowed engine speed.
# The list of gears cannot be used.
truck-gears = Gears must be 1 to { $most } ratios from { $low } to { $high }, each smaller than the one before.
# The curve of the engine's torque cannot be used.
truck-full-load = The full-load curve needs 2 to { $most } points by rising engine speed ({ $low } to { $high }/min), torque 0 to { $torque } N·m.
# The list of stages cannot be used.
truck-stages = Retarder stages must be 1 to { $most } shares above 0, rising, the last one 1.
# A table of retarding cannot be used.
truck-table = The retarder table needs 2 to { $rows } rows by rising speed ({ $low } to { $high }/min), each with the same 1 to { $most } values, none smaller than the one before it in its row.
# The axle groups cannot be used.
truck-axle-groups = There must be 1 to { $most } axle groups of 1 to { $axles } axles whose shares of the braking are 1 in sum.
# The file is no truck file, or is damaged; what is wrong is told in English.
truck-file-broken = Line { $line }: { $what }. Mend it there, or save the file once more.
# A part of the file is missing.
truck-file-cut-off = Part of this file is missing. Copy it or ask for it once more.
# The file is of a version that is not known here.
truck-file-newer = This file has version { $found }; versions up to { $newest } are read here.

## Why a file gives no road, and what to do.

# What to do instead, where the file is of another kind.
-ask-gpx = Export the track as GPX and choose that file.
# What to do where heights are missing.
-ask-heights = Record the road with a device that stores heights, or add heights to the track with a route planner, and export it again.
# Nothing is in it.
file-empty = The file is empty. { -ask-gpx }
# It is of another kind; of other XML with the name of its outermost element.
file-foreign = { $foreign ->
    [html] This is a web page, not a GPX file. Log in where the track is kept and download the track itself as GPX.
    [kml] This is a KML file, which seldom carries usable heights. { -ask-gpx }
    [gzip] This is a gzip archive. Unpack it and choose the GPX file inside.
    [zip] This is a zip archive. Unpack it and choose the GPX file inside.
    [fit] This is a binary FIT recording, not a GPX file. { -ask-gpx }
    [json] This is a JSON file, not a GPX file. { -ask-gpx }
    [pdf] This is a PDF document, not a GPX file. { -ask-gpx }
    [picture] This is a picture, not a GPX file. { -ask-gpx }
    [other-xml] This is an XML file of another kind: its outermost element is “{ $name }”, not “gpx”. { -ask-gpx }
   *[unknown] This is not a GPX file. { -ask-gpx }
}
# GPX with nothing in it. Whether it was cut off or never had a track cannot be known.
file-nothing-inside = No track and no route could be read in the GPX file. If it was cut off when it was copied, copy it again; if not, export the track itself, not only its summary.
# Places without a road between them; how many.
file-waypoints-only = The file has only waypoints ({ $count }): places, but no road between them. Export the track or the route.
# No height could be used; so many could not be read or are in another unit.
# Arguments: $points, $unreadable
file-heights-unreadable = None of the { $points } points has a height in plain metres; { $unreadable ->
    [one] { $unreadable } height could not be read, or carries a unit
   *[other] { $unreadable } heights could not be read, or carry a unit
} that is not guessed. Export the heights in metres, as plain numbers.
# All heights are one number.
file-heights-constant = All heights in the file are the same number, so it does not know the hills ({ $points } points). { -ask-heights }
# No height at all.
file-no-heights = None of the { $points } points has a height, so the road cannot be assessed. { -ask-heights }
# Its points are too far apart; both in m.
file-too-coarse = The points are too far apart: about { $found } m, and { $most } m at most is needed to see the grades. Export it as a track with all points, not as a route of a few turns.
# Many points lie nowhere; the line of the first, and whether latitude and longitude changed places.
file-bad-points = { $bad } of { $points } points { $bad ->
    [one] has
   *[other] have
} no usable latitude and longitude, the first in line { $line }. { $swapped ->
    [true] It looks as if latitude and longitude had changed places; correct that where the file is made and export it again.
   *[false] Export the track again.
}
# The road is too short; both in m.
file-too-short = The road is only { $found } m long; at least { $least } m is needed. Choose a longer track.
# Its heights can be trusted nowhere; its length, km.
file-nothing-left = On none of the { $length } km could the heights be trusted, so no grade can be given. { -ask-heights }
# Too large; both in MB.
file-too-many-bytes = The file has { $found } MB; at most { $most } MB can be read. Export a shorter part of the track, or fewer points.
# Too many points; in millions.
file-too-many-points = The file has more than { $most } million points. Export a shorter part of the track, or fewer points.
# Too many tracks and pieces of tracks.
file-too-many-courses = The file has more than { $most } tracks, or pieces of a track far apart. Export the road that you want alone.
# The road is too long; both in km.
file-too-long = The road is { $found } km long; at most { $most } km can be worked out. Export a shorter part of it.
# Refused as harmful: where and why, with the most that is allowed.
file-refused = The file is refused at line { $line }: { $refusal ->
    [entities] the file declares entities of its own
    [nesting] elements are nested more than { $most } deep
   *[long-tag] one tag is longer than { $most } kB
}, which no track needs. Export the track again from where it was made.
# A road of heights alone: the number of the first that cannot be used, from 1.
file-bad-heights = Height number { $number } cannot be used: at least two finite heights at a step above 0 m and at most 50 m are needed.
# A track was asked for that the file lacks.
file-no-such-course = Track number { $number } was asked for, but the file has { $count }. Choose one of those.
# A file begins too far, in km, from where the one before it ends.
file-legs-apart = File { $number } begins { $gap } km from where file { $previous } ends, so no road leads from the one to the other. Change the order, or turn one of them round.
# Recordings that are to be of one road are not; the number of the one that is not.
file-not-one-road = Recording { $number } does not show the same road. Too little of it lies on the ones before, its heights differ too much, or it is a copy. Compare the files, or join them.
# The person stopped it.
file-cancelled = Stopped as asked; choose a file to start again.

## Findings: what was noticed or repaired in a file. Places along the road stand beside them.

# Its text is in another encoding than it says.
found-encoding = The file says its text is { $declared }, but it was read as { $read-as }.
# It does not say in which encoding its text is.
found-no-encoding = The file does not name its encoding; it was read as { $read-as }.
# Bytes before its start.
found-junk-before = { $count ->
    [one] { $count } byte
   *[other] { $count } bytes
} before the start of the file skipped.
# It breaks off.
found-cut-off = The file breaks off at line { $line }; everything before it is used.
# A prefix of names is not declared.
found-undeclared-prefix = The prefix “{ $prefix }” is used but not declared, first in line { $line }; read all the same.
# A sign that ought to be written otherwise.
found-bad-reference = { $count ->
    [one] { $count } text
   *[other] { $count } texts
} with a stray “&”, first in line { $line }; kept as written.
# Tags that are crossed or missing.
found-tags-repaired = { $count ->
    [one] { $count } tag
   *[other] { $count } tags
} out of place, first in line { $line }; read as meant.
# A document type, from which nothing is taken.
found-document-type = A document type in line { $line } is ignored; nothing was fetched.
# Numbers with a comma before their decimals.
found-decimal-comma = { $count ->
    [one] { $count } number
   *[other] { $count } numbers
} with a decimal comma, first in line { $line }; read as decimals.
# Numbers with blanks around them.
found-padding = { $count ->
    [one] { $count } number
   *[other] { $count } numbers
} with blanks around, first in line { $line }; blanks ignored.
# Heights with their unit, metres.
found-metres-written = { $count ->
    [one] { $count } height
   *[other] { $count } heights
} written with “m”, first in line { $line }; read as metres.
# Heights in another unit.
found-foreign-unit = { $count ->
    [one] { $count } height
   *[other] { $count } heights
} with a unit that is not metres, first in line { $line }; taken as missing, since a unit is never guessed.
# Heights that are no numbers.
found-height-unreadable = { $count ->
    [one] { $count } height
   *[other] { $count } heights
} not usable as a number of metres, first in line { $line }; taken as missing.
# Points that lie nowhere.
found-points-dropped = { $count ->
    [one] { $count } point
   *[other] { $count } points
} without a usable latitude and longitude, first in line { $line }; left out.
# Waypoints beyond the most that are kept.
# Arguments: $count, $kept usize
found-waypoints-left-out = { $count ->
    [one] { $count } waypoint
   *[other] { $count } waypoints
} left out; the first { $kept } are kept.
# Points of a route between its turns.
found-route-shape = { $count ->
    [one] { $count } point
   *[other] { $count } points
} between the turns of the route used for its shape.
# Pieces of the track that were joined, and the widest gap, m.
found-segments-joined = { $count ->
    [one] { $count } segment
   *[other] { $count } segments
} of the track joined; the widest gap is { $widest } m.
# Points at one place.
found-stops-merged = { $count ->
    [one] { $count } point
   *[other] { $count } points
} at the place of the one before; merged.
# Points far off the track.
found-jumps = { $count ->
    [one] { $count } point
   *[other] { $count } points
} far off the track; left out.
# Heights of zero, or without any change.
found-zero-heights = { $count ->
    [one] { $count } height
   *[other] { $count } heights
} of zero or without any change; taken as missing.
# Heights that stick out by up to so many m.
found-spikes = { $count ->
    [one] { $count } height
   *[other] { $count } heights
} sticking out by up to { $largest } m; taken as missing.
# Places where heights were filled, and the longest of them, m.
found-heights-filled = Missing heights filled by straight lines at { $count ->
    [one] { $count } place
   *[other] { $count } places
}, the longest over { $longest } m.
# Why a stretch is not assessed: behind a colon, or behind the button that shows its place.
unassessed-because = { $unassessed ->
    [gap] the file has no points there
    [no-heights] the file has no heights there
    [step] the heights jump there and do not come back
   *[sliver] the stretch between two others without assessment is too short
}.
# Nothing is said of a stretch.
found-not-assessed = No grade and no advice on this stretch: { unassessed-because }
# Heights of the hill above a tunnel; m.
found-tunnel = Heights rise by { $rise } m and fall again, as above a tunnel; a straight line is used.
# Heights of the valley below a bridge; m.
found-viaduct = Heights fall by { $drop } m and rise again, as below a bridge; a straight line is used.
# Places steeper than most roads, and the steepest, per cent.
found-very-steep = Steeper than most roads for trucks at { $count ->
    [one] { $count } place
   *[other] { $count } places
}, by up to { $grade } % over 200 m; check it against the signs.
# Recordings of one road, and how much of it two of them know, km.
found-combined = { $count ->
    [one] { $count } recording
   *[other] { $count } recordings
} of this road combined to one; at least two of them know { $common } km of it.
# Two recordings differ in height on so long a way; both in m.
found-disagree = The two recordings differ by up to { $apart } m of height over { $length } m; the steeper one is used.
# Heights are rough, by so many percentage points; over which length, m, a grade holds.
# Arguments: $points text, $base, $from-terrain, $poor
found-rough = { $from-terrain ->
    [true] Heights seem to come from a terrain model, not from the road
   *[false] Heights are rough
} ({ $points } points between neighbouring 100 m); a grade holds over { $base } m or more{ $poor ->
    [true] , and is advisory only
   *[false] { "" }
}.
