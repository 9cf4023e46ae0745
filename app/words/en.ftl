### English, which the other languages are held against: what is missing there, or has other arguments or
### variants, is an error of the build. A comment says what a message is for.
###
### Arguments are texts, written by `format`, but for these (type, or path of an enum):
###
### $at-start bool
### $axle-place solver::truck::AxlePlace
### $axles u8
### $because solver::plan::Governs
### $brake solver::truck::BrakeKind
### $cell crate::chart::ReadoutCell
### $class solver::road::Class
### $count usize
### $done usize
### $enough bool
### $entry solver::limits::Entry
### $exercise &crate::exercise::Exercise
### $gears usize
### $governs solver::plan::Governs
### $hairpin bool
### $hairpins usize
### $how solver::plan::ChangeHow
### $in-legs bool
### $input solver::study::Input
### $known usize
### $lane crate::chart::Lane
### $lead solver::day::Lead
### $less bool
### $load solver::day::Load
### $lowest bool
### $needed bool
### $number usize
### $off bool
### $overdrive bool
### $partly-unassessed bool
### $phase crate::message::Phase
### $preset solver::truck::Preset
### $reading crate::chart::Reading
### $reversed bool
### $route bool
### $row crate::tell::TwoRow
### $rows usize
### $runs usize
### $screen crate::class::Screen
### $seed u32
### $service-brakes solver::day::ServiceBrakes
### $some usize
### $sooner bool
### $step crate::chart::GradeStep
### $surface solver::day::Surface
### $term crate::tell::Term
### $transmission solver::truck::Transmission
### $units crate::format::Units
### $verdict solver::plan::Verdict
### $why solver::day::Withheld

## Words of the notice before the page, and of what the pictures say to whoever does not see them.

# The button that acknowledges the notice: the driver's own answer.
i-am-parked = I am parked
# Name of the table that says what the picture of the road shows.
road-table = The road as a table
# Heads of its first columns: from where to where; which part of the road.
road-table-heads =
    .span = from – to
    .part = part
# A stretch that is no descent.
between = no descent
# Name of the table of the engine's curves.
power-table = Power as a table
# Heads of its first columns: engine speed, and the power that pulls.
power-heads =
    .engine-speed = engine speed, /min
    .pulls = pulls
# Head of a column: the power that holds at this stage.
holds = holds, { $stage }
# Names of the handles of the part shown: its beginning and its end.
window-ends =
    .beginning = Beginning of the part shown
    .end = End of the part shown
# It leads back to its start.
ends-where-it-began = It ends where it began.
# How far from its start it ends as the crow flies, and towards where.
leads-away = It ends { $away } from its start as the crow flies, to the { $towards }.
# Eight directions from north on around, as they stand in that sentence.
winds =
    .north = north
    .north-east = north-east
    .east = east
    .south-east = south-east
    .south = south
    .south-west = south-west
    .west = west
    .north-west = north-west
# What the profile on the card is, and where its figures stand.
card-profile = Profile of the road. What it shows stands in the rows below it.

## Words of the road picture.

# Name of the whole picture.
picture = The road
# Before the readings that may fill the profile.
fill-by = Fill by
# A reading, on its button.
reading = { $reading ->
    [gear] gear
    [stage] stage
    [heat] brake heat
    [speed] speed
   *[grade] grade
}
# A step of grade.
grade-step = { $step ->
    [down10] −10 % and steeper
    [down8] −8 to −10 %
    [down6] −6 to −8 %
    [down4] −4 to −6 %
    [down2] −2 to −4 %
    [level] level
    [up2] up 2 to 5 %
   *[up5] up 5 % and steeper
}
# Name of the zoom buttons together.
zoom = Zoom
# Closer.
zoom-in = Zoom in
# Less close.
zoom-out = Zoom out
# The whole road.
zoom-all = Whole road
# Title of a lane.
lane = { $lane ->
    [height] height
    [gear] gear
    [stage] stage
    [heat] brake heat
    [speed] speed
   *[temperature] brakes
}
# What the thin line of the temperature lane is.
after-stop = if stopped
# The bars of the speed lane: what curves allow.
bend-caps = in curves
# Works out only what the window shows.
only-this = Only this part
# Where the road was not assessed.
not-assessed = not assessed
# Before the value of a limit line.
limit = limit
# Before the even grade that the hill asks for as much as.
before-asked = asks for
# Name of the cursor.
cursor = Place on the road
# The same, whatever stands in the cell.
cell-head = { $cell ->
    [at] at
    [grade] grade
    [height] height
    [gear-stage] gear · stage
    [speed] speed · engine
    [carried] retarder carries
    [brakes] brakes
   *[if-stopped] if stopped here
}
# Head of the share that the engine carries by itself.
engine-carries = engine carries
# Head of the grade, with the length over which it is meant.
grade-over = grade over { $length }
# That the road was not assessed here.
nothing-said-here = The road could not be assessed here: nothing is said about it.
# On which descent, and how far it is to its foot.
on-descent = On descent { $number }, { $to-foot } to its foot.
# Which descent comes next, and how far it is to its crest.
descent-begins = Descent { $number } begins in { $ahead }.
# None comes.
no-descent-ahead = No descent ahead.
# The curve here: to which side, at most how fast, its radius.
bend = { $hairpin ->
    [true] Hairpin
   *[false] Curve
} { $side }: at most { $speed } (radius about { $radius }, an estimate).
# A place that lies here.
place-here = Here: { $name }.
# A place ahead, and how far it is.
place-ahead = { $name } in { $ahead }.
# Name of the strip of the whole road.
strip = The whole road, and the part shown above
# Name of the plan shape.
plan-shape = The road seen from above, north up
# Where the road starts.
start = start
# Where it ends.
end = end
# North, a letter.
north = N
# In place of the number of a stage, in a narrow band: none is on.
short-stage-off = off

## Words of use without a network.

# The browser keeps all of the page.
works-offline = This page works without a network now.
# A newer version waits; what loading it costs.
newer = A new version of this page is ready. Truck, day, the road and its places stay. The marker entered for the card, a road kept beside and what held today do not.
# Loads it.
load-newer = New version: load it
# Puts that off.
later = Later
# Forgets what is kept on this machine.
forget-all = Forget all that is kept on this machine
# The same, when it was pressed once.
forget-really = Really forget trucks, entries, roads and places? Press once more
# Link that saves the page as one file.
save-page = Save this page as one file (for a stick)

## Words of what is handed on: the link with truck and day, the project with all of it.

# Makes and copies it.
make-link = Copy a link with truck and day
# It was copied; what it carries and what not.
link-copied = Copied. The link carries this truck and this day, no road and no place. Who opens it decides whether to use them.
# It could not be copied and is to be taken from the field below; what it carries.
link-made = Copy the link from here. It carries this truck and this day, no road and no place. Who opens it decides whether to use them.
# Name of that field.
link-label = Link with truck and day
# A link that was opened brings a truck and a day.
link-offered = This link brings a truck and a day. Your own entries are in use until you decide. Whoever sent it may drive another vehicle: check every entry.
# Uses them.
use-link = Use truck and day of the link
# Does not.
keep-mine = Keep mine
# They are in use.
link-taken = Truck and day of the link are in use now: check them before you trust the figures.
# Back to what was entered before.
back-to-mine = Back to mine
# It cannot be read.
link-broken = The truck and the day in this link cannot be read; part of it may be missing. Ask for it once more. Your own entries are in use.
# Saves everything as one file.
save-project = Save all of it as one file
# What it holds, and how it is opened.
project-sentence = The road as it was given, places and limits on it, truck and day, and the same for a road kept beside it. It is opened here like a road, on any machine.
# End of the name of a file: name of that file.
project-name-ending = .steadygrade
# It was opened: its entries are in use.
project-opened = The project’s truck, day and places are in use now: check them before you trust the figures.
# Name of a file of a road without a name.
file-stem = road

## Words that stand in a file saved for a device.

# With every advice: what it is not, and who comes first.
mark-caution = Worked out from entries and recorded heights, which err. Not permission to descend: posted signs, local law and the vehicle maker's limits come first.
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

## Words of the teaching roads.

# Head of their list.
lessons-head = Teaching roads
# That they are invented.
lessons-invented = These roads are invented for teaching; none of them exists.
# For which truck and day it is said what happens.
lessons-said-for = What happens is said of the first truck in the list on the usual day. With another truck, or on another day, what is worked out counts, not this note.
# Label of what one shows.
lesson-shows-label = What it shows
# Label of what is often believed.
lesson-believed-label = What is often believed
# Label of what happens.
lesson-happens-label = What happens
# Label of the question.
lesson-question-label = To ask the class
# What is said of a teaching road. No figures: those stand in the plan.
lesson-false-finish =
    .name = False finish
    .shows = A long grade eases as if it were over, and then goes on steeper.
    .believed = Where the road flattens the descent is over, and one can shift up.
    .happens = It is one descent. The easing is too short to shift up and down again, and the steepest part lies behind it. The whole needs a lower gear than the part before the easing would need by itself.
    .question = Where must the low gear be engaged, and what could have told the driver so before the crest?
# What is said of a teaching road. No figures: those stand in the plan.
lesson-three-steps =
    .name = Three steps
    .shows = Three like steps with short level stretches between them.
    .believed = If the first step went well, the third will go just as well.
    .happens = With the retarder alone all three are held in the same way, and the service brakes stay cool. Where snubs are allowed, each step begins with warmer brakes than the one before, and the third can no longer be taken as fast as the first. By itself it could.
    .question = How warm may the brakes be at the third crest if one hard stop must still be left?
# What is said of a teaching road. No figures: those stand in the plan.
lesson-short-and-steep =
    .name = Short and steep
    .shows = A short, steep hill with a town and a signal at its foot.
    .believed = It is so short that the brakes will manage it, whatever the gear.
    .happens = Of all these roads the shortest descent needs the lowest gear and the lowest speed. Here the steepness decides the gear, not the length.
    .question = The signal at the foot turns red, and the gear was chosen too high. What is left to the driver?
# What is said of a teaching road. No figures: those stand in the plan.
lesson-long-and-gentle =
    .name = Long and gentle
    .shows = A gentle grade that goes on for a very long way.
    .believed = So gentle a grade is harmless: top gear, and the brakes now and then.
    .happens = With the reserve asked for, the retarder holds it only below the top gear and below the usual speed limit. In top gear at that limit, on the service brakes alone, they get hotter than their limit. On the short steep hill the same would heat them less, because far less height is lost there; it would be wrong there too.
    .question = Which makes more heat: how steep a hill is, or how much height it loses? And where does that heat go?
# What is said of a teaching road. No figures: those stand in the plan.
lesson-hairpins =
    .name = Hairpins
    .shows = A moderate grade with one hairpin after another.
    .believed = The grade alone decides gear and speed.
    .happens = Here the curves decide. Without them the same grade would be held at a higher speed in a higher gear. The retarder holds the grade alone, but slowing for the hairpins takes the service brakes as well, and they get warmer than on the same grade without curves.
    .question = Must the truck be slow before the hairpin or in it? And in which gear does the engine still turn over there?

## Words of the class view: for an instructor, a projector and a room.

# Name of a screen.
screen = { $screen ->
    [roads] Roads
    [forces] Forces
    [run] The run
    [pair] Side by side
   *[exercises] Exercises
}
# The one idea of a screen.
idea = { $screen ->
    [roads] A road to talk about
    [forces] Where a gear’s line meets the hill, the truck settles
    [run] One truck, down this road, as planned
    [pair] One road, one start, one thing done otherwise
   *[exercises] Work it out first, then look
}
# What the person in front may say there, a sentence each.
notes-roads =
    .first = Choose a road, and let the class say how they would come down it before anything is shown.
    .second = Any GPX file can be dropped here too: the road that they drive every week is the best one.
notes-forces =
    .first = Ask first: which gear? Then drag the hill to its grade.
    .second = The hill asks for nearly the same force at every speed; a low gear gives more of it. That is all there is to the choice of a gear.
    .third = Drag the hill until the mark falls off the end of a line: above that end the engine would turn too fast.
    .fourth = Add a tenth of the mass and see the mark move.
notes-run =
    .first = Stop before a crest and ask what should be engaged by now.
    .second = Stop on a relief: is it over?
    .third = The temperature is a calculation. What it cannot see, such as adjustment, is worse than what it can.
notes-pair =
    .first = Let the class bet before it starts: how many degrees, how many minutes?
    .second = Stop where they part. Nothing can be seen from the seat yet.
    .third = At the end ask what was won by it.
notes-exercises =
    .first = Print the blank sheet; the answer sheet has the same number.
    .second = Figures are rounded in the steps as they are written, so that they can be followed by hand.
# Name of the buttons that lead from screen to screen.
screens = Screens of the class
# Leads to the road page.
to-road-page = Road page
# Shows or hides the notes.
show-notes = Notes
# Which keys do what.
keys = Page down and page up: next and former screen. N: these notes. Space: start and stop the run. Arrows left and right: step it. Up and down: faster and slower. Home: from the start.
# What none of it is, and who comes first.
class-caution = For teaching, from entries and recorded heights, which err. Not permission to descend: signs, the law and the maker’s limits come first.
# Label of the grade.
grade-label = Hill
# Label of the mass.
mass-label = Mass
# Label of the stage.
stage-label = Retarder
# What the picture of forces shows, for who cannot see it.
forces-about = Holding force against road speed: a rising or falling line for each gear, and across them what hills ask for. Below it is said where each gear settles.
# Name of the upward axis.
holding-axis = force
# Where no gear settles with this stage.
none-settles = No gear settles on this hill with this stage.
# Where a line meets the hill all that holds is used up.
nothing-in-reserve = At a crossing nothing is in reserve.
# Prints what is on the screen.
print-screen = Print
# What the profile is, for who cannot see it.
profile-about = The road from start to end, with a mark for each truck
# What the picture of the truck shows.
truck-about = The truck on its slope, with an arrow for each force; the gauges tell the same in figures
# A ride is being worked out.
driving = Being driven …
# This cannot be driven on this road with this truck.
no-ride = This cannot be driven here: there is no descent with a safe speed on this road, or nothing to lose.
# Starts the run.
class-start = Go
# Stops it.
stop = Stop
# Goes one step on.
class-step = Step
# Goes back to the start.
anew = From the start
# Makes it slower.
slower = Slower
# Makes it faster.
faster = Faster
# Name of the force of the hill.
arrow-hill = hill
# Of the engine's pull.
arrow-engine = engine
# Of retarder and motoring engine.
arrow-retarder = retarder
# Of the service brakes.
arrow-service = service brakes
# Of rolling and air.
arrow-resistance = rolling, air
# Label of the speed.
gauge-speed = speed
# Label of the gear.
gauge-gear = gear
# Label of the retarder's stage.
gauge-stage = stage
# Label of the engine speed.
gauge-engine = engine
# Label of the retarding power.
gauge-power = retarding
# Label of the brake temperature.
gauge-brakes = brakes
# Label of that after one hard stop.
class-after-stop = if stopped hard
# Back to the exercise before.
exercise-back = Former exercise
# On to the next exercise.
exercise-on = Next exercise
# Name of the choice of what is done otherwise.
slips = What the second truck does otherwise
# Nothing is done otherwise.
as-planned = as planned
# One gear higher than planned.
gear-high = one gear higher
# A tenth heavier than entered.
somewhat-heavier = 10 % heavier
# Faster than planned by a speed.
faster-by = { $speed } faster
# A stage fails.
stage-lost = stage lost
# The brakes are hot at the start.
hot-brakes = hot brakes
# Where two rides part.
they-part = They part at { $at }.
# They do nowhere.
nowhere-apart = On this road it makes no difference that is worth naming.
# Arriving sooner by so many seconds, or later where negative.
# Arguments: $sooner, $time
time-apart = { $time } { $sooner ->
    [true] sooner
   *[false] later
}
# Arriving at the same time.
no-time-apart = no time
# What it came to: the time, and the brakes after a hard stop, otherwise and as planned.
compared = { $name }: { $time }; after a hard stop { $wrong } in place of { $right }.
# From where on a hard stop would pass the limit, and that brakes fade.
passes-limit = From { $from } on a hard stop would pass the limit. Here the brakes hold however hot they are; on the road they fade.
# It made the brakes little hotter, this time.
forgiven = This hill forgives it. The next one may not.
# What keeps the reserve: gear and speed.
class-reserve-kept = { $reserve } in reserve: { $gear }, at no more than { $speed }.
# That no gear keeps it.
class-no-gear-keeps = { $reserve } in reserve: no gear.

## Words of exercises with worked answers.

# Head of a sheet.
sheet-head = Exercises, set { $seed }
# Title of the sheet without answers.
blank-sheet = Sheet to work on
# Title of the sheet with answers.
answer-sheet = Sheet with answers
# Draws another set.
another-set = Another set
# That a sheet teaches, and is no advice for a road.
sheet-caution = These figures are for teaching. They are no advice for any road, truck or load: masses, grades and speeds are varied, and much is left out.
# Where the road has no descent to set exercises on.
no-exercises = No descent on this road is long enough to set exercises on.
# Why exercises on gear and stage are left out.
stages-left-out = On this day no retarder stage is recommended. Exercises on gear and stage are left out.
# Head of one, by its number on the sheet, from 1.
exercise = Exercise { $number }: { $exercise ->
    [control-speed] control speed
    [gear-choice] choosing the gear
    [braking-work] braking work
    [haste] time saved by going faster
   *[brake-heat] brake heat
}
# Label of what is given.
given-label = Given
# Label of the room to write.
room-label = Your working and answer
# Label of the worked steps.
steps-label = Worked steps
# Whether a truck of this mass settles on this grade, in the gear and stage of the exercise.
# Arguments: $gear, $stage, $mass, $grade
ask-control-speed = A truck of { $mass } is on a downgrade of { $grade } in { $gear }, { $stage }, with no throttle and no service brakes. Does it settle at a speed, and at which?
# Which is the highest gear that holds it with this reserve.
ask-gear = A truck of { $mass } is to be held on a downgrade of { $grade } by engine and retarder alone, with { $reserve } in reserve. Below stand gears at the fastest speed at which each is used to hold, with the engine speed and the holding force of the strongest stage that the driven axles grip. Which is the highest gear that keeps the reserve, and at what speed?
# How much energy must be taken away, where engine and retarder carry this share.
ask-work = A truck of { $mass } goes down { $drop } over { $length } of road at a steady { $speed }. How much energy must engine, retarder and brakes take away? Engine and retarder carry { $share } of it: how much is left for the service brakes?
# How much time the faster of two speeds saves.
ask-time = A descent is { $length } long. How much time does a truck save that goes down it at { $fast } instead of { $slow }? By how much does its energy of motion grow?
# How warm the brakes of the exercise are at the foot.
# Arguments: $axle-place, $axles, $length, $speed, $power
ask-heat = On a descent of { $length } at a steady { $speed } the service brakes take { $power } all the way; engine and resistance take the rest. How warm are the brakes of { $axle-place ->
    [steer] { $axles ->
        [one] the steer axle
       *[other] the steer axles
    }
    [drive] { $axles ->
        [one] the driven axle
       *[other] the driven axles
    }
   *[trailer] { $axles ->
        [one] the trailer axle
       *[other] the trailer axles
    }
} at the foot?
# Where it settles.
settles = It settles at about { $speed } ({ $engine-speed }): there it holds as much as is left to hold back.
# It holds back more than needed at every speed.
slows-down = It does not settle: it holds back more than needed at every speed of this gear, and slows down. A weaker stage or a higher gear may do.
# It overruns above this speed.
gets-away-above = It does not settle: it holds back more than needed below about { $speed }, and above that it overruns. A truck that has got faster is not caught again. It needs a lower gear, engaged before the crest; else the service brakes must help.
# It overruns at every speed.
gets-away = It does not settle: it overruns at every speed of this gear. It needs a lower gear, engaged before the crest, or a stronger stage where there is one; else the service brakes must help.
# The gear that is the answer, its stage, speed, engine speed and reserve.
gear-chosen = { $gear }, { $stage }, at no more than { $speed } ({ $engine-speed }), with { $reserve } in reserve. It is engaged before the crest.
# No gear keeps the reserve.
no-gear-keeps = None: not even the lowest gear keeps the reserve. A truck like this must not go down there: less mass or another road.
# The energy to be taken away, and what of it is left for the service brakes.
work-left = About { $left } must be taken away; about { $service } of that is left for the service brakes.
# The time saved, and how many times as large the energy of motion is.
time-saved = About { $time }, and the energy of motion is { $times } times as large: so much more for the brakes in every stop. Whether engine and retarder would hold the truck at that speed is not asked here.
# How warm the brakes are at the foot, whether over the limit, and what is left out.
# Arguments: $foot, $limit, $over bool
warm-at-foot = About { $foot } at the foot: { $over ->
    [true] over the limit of { $limit } entered
   *[false] not over the limit of { $limit } entered, but with no stop in hand
}. Left out: a stop, brakes that do not share evenly, their adjustment, radiation, and cooling that differs from truck to truck by a factor of two and more.
# Name of a quantity.
term = { $term ->
    [rolling-coefficient] Rolling resistance coefficient
    [drag-area] Drag area
    [air-density] Density of the air
    [air-density-ratio] Density of the air, over that at sea level
    [headwind] Headwind (a tailwind is negative)
    [holding-table] Holding force by engine speed and road speed
    [heat-capacity] Heat that these brakes store
    [cooling] Heat that they give off at this speed
    [group-share] Their share of the braking
    [air-temperature] Air
    [brakes-at-crest] Brakes at the crest
    [sine] Sine of the angle of the road
    [cosine] Cosine of the angle
    [gravity] Gravity along the road
    [rolling] Rolling resistance
    [against-air] Speed against the air
    [air] Air resistance
    [demand] Left to hold back
    [holding-against-demand] Holding force, against what is left to hold back
    [compared-at] Reckoned at
    [length-in-feet] Length in feet
    [gravity-work] Work of gravity
    [rolling-work] Taken by rolling resistance
    [air-work] Taken by the air
    [work-left] Left to be taken away
    [carried-work] Engine and retarder
    [service-work] Service brakes
    [slow-time] Time at the slower speed
    [fast-time] Time at the faster speed
    [time-saved] Time saved
    [motion-energy] Energy of motion, faster over slower
    [group-power] Power at these brakes
    [time-down] Time down
    [time-constant] Time constant: heat stored over heat given off
    [settled] Temperature that they would reach in the long run
    [ahead] Share of that rise still ahead at the foot
   *[at-foot] At the foot
}
# “Gear 6 at 36 km/h”.
gear-at = { $gear } at { $speed }
# Whether a gear that is tried keeps the reserve.
enough = { $enough ->
    [true] enough
   *[false] too little
}

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
hours-and-minutes = { $hours } h { $count } min
