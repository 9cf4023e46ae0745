### English, which the other languages are held against, as in the folder above: what only the page says.
###
### Arguments are texts, written by `format`, but for these (type, or path of an enum):
###
### $at-engine crate::entries::AtEngine
### $axle-place solver::truck::AxlePlace
### $axles u8
### $brake solver::truck::BrakeKind
### $by-exponent bool
### $cell crate::chart::ReadoutCell
### $class solver::road::Class
### $count usize
### $done usize
### $enough bool
### $entry solver::limits::Entry
### $exercise &crate::exercise::Exercise
### $gears usize
### $hairpin bool
### $in-legs bool
### $known usize
### $lane crate::chart::Lane
### $lead solver::day::Lead
### $more bool
### $number usize
### $off bool
### $on-shaft crate::entries::OnShaft
### $overdrive bool
### $phase workers::message::Phase
### $preset solver::truck::Preset
### $reading crate::chart::Reading
### $reversed bool
### $route bool
### $row crate::compare::Row
### $rows usize
### $screen crate::screen::Screen
### $seed u32
### $sooner bool
### $stages usize
### $step crate::chart::GradeStep
### $term crate::tell::Term
### $units ::words::format::Units
### $verdict solver::plan::Verdict

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
fill-by = Colour
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
    [down10] −10 % and steeper
    [down8] −8 to −10 %
    [down6] −6 to −8 %
    [down4] −4 to −6 %
    [down2] −2 to −4 %
    [level] level
    [up2] up 2 to 5 %
   *[up5] up 5 % and steeper
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
# What the thin line of the temperature lane is: the brakes after a hard stop. It stands in a narrow margin.
after-stop = hard stop
# The bars of the speed lane: what curves allow.
bend-caps = in curves
# Works out only what the window shows.
only-this = Only this part
# Where the road was not assessed.
not-assessed = not assessed
# Before the value of a limit line.
limit = limit
# Name of the cursor.
cursor = Place on the road
# The same, whatever stands in the cell.
cell-head = { $cell ->
    [at] at
    [grade] grade
    [height] height
    [gear] gear
    [stage] stage
    [speed] speed
    [engine] engine
    [carried] retarder carries
    [brakes] brakes
   *[if-stopped] after a hard stop here
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
# Title of a lane, short enough for the column left of it.
lane-title = { $lane ->
    [height] height
    [gear] gear
    [stage] stage
    [heat] heat
    [speed] speed
   *[temperature] brakes
}
# Before the steepest grade of a descent.
steepest-word = steepest
# On which grade a gear is changed.
on-grade = on { $grade }
# A change down on the hill: first the speed to brake to, then the gear.
brake-then = brake to { $speed }, then gear { $gear }
# Name of a button over descents that lie close together; it shows them larger.
descents-joined = Descents { $from } to { $to }: show them
# Head of the list of keys.
keys-head = Keys of the picture
# Closes it.
keys-close = Close
# Keys, as they are written on a keyboard.
key-caps =
    .along = ← →
    .far = Shift ← →
    .ends = Home End
    .crests = Page ↑ ↓
    .descent = 1–9
    .zoom = + −
    .whole = 0
    .enter = Enter
    .colour = C
    .alone = F
    .put = P
    .escape = Esc
# What each of them does.
key-does =
    .along = 100 m along the road
    .far = 1 km along the road
    .ends = start or end of the road
    .crests = crest before or after
    .descent = choose this descent
    .zoom = closer, less close
    .whole = whole road
    .enter = show the chosen descent
    .colour = next colour
    .alone = picture alone
    .put = put a place at the cursor
    .escape = close, or end picture alone

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

## Words of the teaching roads.

# Head of their list.
lessons-head = Teaching roads
# That they are invented.
lessons-invented = These roads are invented for teaching; none of them exists.
# For which truck and day it is said what happens.
lessons-said-for = Written for the first truck in the list on a usual day. With another truck, or on another day, what is worked out counts, not this note.
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
    .happens = With the retarder alone all three are held in the same way, and the service brakes stay cool. Where short applications are allowed, each step begins with warmer brakes than the one before, and the third can no longer be taken as fast as the first. By itself it could.
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
    [pair] Same road, same start, one thing different
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
    .second = Stop where they differ. Nothing can be seen from the seat yet.
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
keys = Page down and page up: next and previous screen. N: these notes. Space: start and stop the run. Arrows left and right: step it. Up and down: faster and slower. Home: from the start.
# What none of it is, and who comes first.
class-caution = For teaching, from entries and recorded heights, which contain errors. Not permission to descend: signs, the law and the maker’s limits come first.
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
class-after-stop = after a hard stop
# Back to the exercise before.
exercise-back = Previous exercise
# On to the next exercise.
exercise-on = Next exercise
# Name of the choice of what is done otherwise.
slips = What the second truck does differently
# Nothing is done otherwise.
as-planned = as planned
# One gear higher than planned.
gear-high = one gear higher
# A tenth heavier than entered.
somewhat-heavier = 10 % heavier
# Faster than planned by a speed.
faster-by = { $speed } faster
# A stage fails.
stage-lost = stage lost
# The brakes are hot at the start.
hot-brakes = hot brakes
# Where two rides part.
they-part = They differ from { $at }.
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
    [compared-at] Worked out at
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

## Words of the way down: the sentence that decides, legs, where the service brakes are asked for, and other ways down.

# That a stretch of the descent was not assessed.
not-assessed-on = Not assessed: { $span }. Nothing is known of the grade there.
# Label of the legs.
legs-label = Gear by gear
# Label of the way that never touches the service brakes.
untouched-label = Without service brakes
# Label of one gear all the way.
one-gear-label = One gear all the way

## Words of the card for the cab.

# Head of the section.
card-head = Card
# What it is for.
card-sentence = For the cab, all of the road. On a phone save it as a picture; on paper it takes as many pages as it needs. Read it before the crest, parked.
# Prints it.
print-card = Print the card
# Saves it as a picture, long and narrow as a phone.
save-picture = Save it as a picture for the phone
# End of the name of a file: name of that file, for a road as recorded or turned around.
picture-name-ending = { $reversed ->
    [true] -reversed-card.png
   *[false] -card.png
}
# Saves its rows.
save-rows = Save its rows as CSV
# Label of the marker at the start.
marker-label = Marker or odometer at the start of the road
# Markers count down.
counts-down = markers count down
# That the markers typed do not reach over the road: what would stand at its start and at its
# end, the remedy, and what the card has meanwhile.
markers-miss = The markers do not fit this road: they would run from { $start } at its start to { $end } at its end, and none are below zero. Correct the marker, or which way they count. Until then the card has distances from the start.
# Order of the rows: its label, as they are driven, the worst first.
card-orders =
    .label = Order of the rows
    .along = as driven
    .worst = worst descent first
# That the card belongs to entries before.
card-is-old = Do not use: this card belongs to earlier entries
# Not to go down with what is entered.
do-not-descend = DO NOT GO DOWN with what is entered
# For which descents, by their numbers, no safe speed was found, and what comes first.
# Arguments: $numbers, $count
no-speed-for = No safe speed was found for { $count ->
    [one] descent
   *[other] descents
} { $numbers }. Take another road, or plan again with less load or on a better day. Posted signs and licensed practice come first.
# The same: mass, retarder, surface, load, air, and the brakes at the start.
# Arguments: $mass, $retarder, $surface text, $load text, $air, $brakes
facts-of = { $mass } · { $retarder } · { $surface }, { $load } · air { $air } · brakes { $brakes } at the start
# Which page of how many.
# Arguments: $page usize, $pages usize
card-page = page { $page } of { $pages }
# Which descents stand on a page, by their numbers.
# Arguments: $count, $numbers
card-page-has = { $count ->
    [one] descent
   *[other] descents
} { $numbers }
# How long the road is, how far it falls in all, and how many descents it has.
card-sum = { $length } · { $fall } down · { $count ->
    [one] 1 descent
   *[other] { $count } descents
}
# Of how much of the road the card speaks, and what is not known of it.
card-covers = Speaks of { $covered } of { $length }. Not known: { $unknown }, { $fall } of drop. No advice there.
# What is counted along the road: what the marker shows at its start, and which way markers count.
# Arguments: $at, $counts-down bool
card-marker = marker { $at } at the start, { $counts-down ->
    [true] falling
   *[false] rising
}
# The same without markers, behind “km (miles)”.
card-no-marker = from the start
# Head of what the card was worked out for.
worked-out-for = Worked out for
# Head of what must be so.
your-truck = Is this your truck?
# What must be so: the mass, the gears, the retarder's stages, the surface.
check-mass = { $mass } or less
# Arguments: $count, $ratio text
check-gears = { $count } gears, axle { $ratio }
check-stages = { $count ->
    [one] its stage works
   *[other] all { $count } stages work
}
check-no-retarder = no retarder counted on
check-surface = road: { $surface }
# What follows where one of them is not so.
one-empty = <strong>One empty: not your card.</strong> Work it out again.
# Mark of the hardest descent on every page, of how many.
hardest-of = { $count ->
    [one] The only descent
   *[other] Hardest of all { $count }
}
# Which are the hardest next, by their numbers.
hardest-then = then { $numbers }
# Steepest grade.
card-steepest = steepest { $grade }
# Each descent has this verdict.
# Arguments: $count, $verdict text
all-alike = { $count ->
    [one] The descent: { $verdict }.
   *[other] All { $count }: { $verdict }.
}
# Heads of the columns: by where to be in the gear, gear, stage, speed to hold, what to know.
card-heads =
    .by = be in it
    .gear = gear
    .stage = stage
    .hold = hold
    .know = what to know: km (miles)
# Before a distance by which a gear must be in, or from which it may be.
# Arguments: $how solver::plan::ChangeHow, $unit
card-by = { $how ->
    [down] by { $unit }
   *[up] from { $unit }
}
# To change down between two legs: what to slow to first.
# Arguments: $speed, $gear u8
card-change-down = Slow to { $speed }, then gear { $gear }.
# To change up between two legs, or to stay in the lower gear.
# Arguments: $gear u8, $kept u8
card-change-up = Gear { $gear } only from here. Or keep gear { $kept }.
# Stretches of which nothing is known.
card-unknown = { $spans } not known: no advice
# The unit before a mile marker.
mile = mile
# From which speed down to which to snub.
know-snub = Brake { $from } to { $to }, release, repeat.
# That steep bits up to a grade cannot be ruled out, and what follows.
know-in-doubt = Short steep bits up to { $grade } in doubt: keep the service brakes ready.
# Where it eases, but is not over.
know-easing = The easing at { $at } is not the end: stay in gear.
# That it is not known how it begins.
know-begins-unknown = How it begins is not known: the road before it was not assessed.
# How many curves ask for less than the hold speed, and the slowest of them.
# Arguments: $count, $under, $speed, $at
know-slow-curves = <strong>{ $count ->
    [one] 1 curve
   *[other] { $count } curves
} under { $under }</strong>, slowest { $speed }, { $at }
# The slowest curve, where no speed is safe that it could be held against.
know-slow-curve = Slowest curve { $speed }, { $at }.
# A posted limit, from where to where.
know-posted = Posted { $speed }, { $km }, { $miles }.
# An escape ramp.
know-ramp = Escape ramp at { $at }.
# A quiet zone, and what it may mean.
know-quiet = Quiet zone at { $at }: an engine brake may be forbidden.
# What waits at the foot.
know-at-foot = At the foot: { $name }, { $at }.
# The same where it has no name.
to-stop-at-foot = a place to stop
# Where what is known of it ends, and to stay in gear there; where no speed is safe without a gear.
# Arguments: $at, $gear u8
know-cut-short = <strong>Known only to { $at }.</strong> How it goes on is not known: stay in gear { $gear }.
know-cut-short-bare = <strong>Known only to { $at }.</strong> How it goes on is not known.
# How long it is, and how far it falls.
know-size = { $length }, { $fall } down
# Where it is steepest.
know-steepest = <strong>steepest { $grade }</strong>, { $at }
# Where it ends.
know-foot = <strong>foot { $at }</strong>
# What comes soon behind the foot: nothing is known; another crest; which gear to be in there.
know-then-unknown = { $after } on: not known to { $at }
know-then-crest = { $after } to crest { $number }
# Arguments: $gear u8
know-stay = stay in gear { $gear }
# Arguments: $gear u8
know-then-gear = then gear { $gear }
# Head of that list.
before-crest-head = Before each crest
# To stop at the brake check, and what to look at.
stop-at-check = Stop at the brake check, { $at }: adjustment, leaks, drums or discs, tyres, load.
# The same without a brake check.
stop-where-allowed = Stop where it is allowed: adjustment, leaks, drums or discs, tyres, load.
# To try the retarder.
try-retarder = Lift off briefly: does the retarder come in, at every stage?
# Whether it is still the road that was planned.
look-ahead = Weather, signs, closures: is it still the road that was planned?
# Gear and stage of the first advice, and before which place.
# Arguments: $gear u8, $off, $stage, $at
gear-before = { $off ->
    [true] Gear { $gear } engaged before { $at }, { $stage }.
   *[false] Gear { $gear } and { $stage } engaged before { $at }.
}
# The same where the road starts in that descent: before setting off.
# Arguments: $gear u8, $stage
gear-at-start = Before setting off: gear { $gear }, { $stage }. The road starts in the descent.
# Not to shift on the hill; in legs, only where the rows have it.
shifting = { $in-legs ->
    [true] Shift on the hill only as the rows say.
   *[false] No shifting on the hill.
}
# Head of that list.
in-trouble-head = If it gets away: in this order
# To brake hard while that still helps.
brake-now = Brake hard now and stop, while the brakes are cool enough to do it.
# To stay in gear.
stay-in-gear = Stay in gear. Never neutral, never the clutch, no shift down at speed.
# To take any way that rises; no ramp is entered.
any-way-up = Take an escape ramp or any way that rises. None is entered here; there may be some.
# To take a ramp at one of these places, or any way that rises.
take-ramp = Take the escape ramp at { $ramps }, or any way that rises.
# To warn the others.
warn-others = Lights and horn: warn the others.
# None are entered, and what that does not mean.
no-places-entered = None are entered. That does not mean that there are none.
# The small print.
card-cautions = Worked out from your entries and recorded heights, which contain errors; not permission to descend. It cannot see adjustment, tyres, surface, weather, traffic or the load. Posted signs, the law, your employer and the vehicle’s maker come first. The service brakes remain the means to stop. In doubt: stop at the top, go slower, take another road.
# End of the name of a file: name of the file of rows, for a road as recorded or turned around.
rows-name-ending = { $reversed ->
    [true] -reversed-descents.csv
   *[false] -descents.csv
}

## Words of the page's frame: names, buttons, files, progress, trouble.

# Leads to the class view.
to-class = Class
# Label of the size of buttons and fields.
targets = Size of buttons and fields
# As usual.
usual-targets = bare hands
# Large, for hands in gloves.
large-targets = gloves
# What the page is, in a line.
purpose = How to come down each hill of a road: gear, retarder stage, speed, brake heat
# Link to the section of the road.
road-section = Road
# Link to the section of the descents.
descents-section = Descents
# Name of the navigation, for screen readers.
sections = Sections of this page
# Jumps over the header.
skip-to-answer = Skip to the answer
# Group of unit buttons.
units = Units
# Metric button.
metric = km/h · m · t
# Imperial button.
imperial = mph · ft · lb
# Group of theme buttons.
theme = Light or night
# Theme buttons.
light = light
# Dark theme.
night = night
# As the machine is set.
system = auto
# Button that chooses a file.
choose-file = Choose a GPX file
# Beside it.
or-drop = or drop one anywhere on the page
# While a file hovers over the page.
drop-here = Drop the GPX file: it is read on this machine only
# Nothing leaves the machine.
stays-here = Nothing leaves this machine.
# Mark of the demo.
demo-mark = invented demo
# What the demo is.
demo-sentence = This is an invented road, not a real pass. Choose your own GPX file, or drop it anywhere on the page; it stays on this machine.
# Button back to the demo.
show-demo = Show the demo
# Button that turns the road around.
reverse = Reverse
# Mark of a road that was turned around.
reversed-mark = reversed
# Label of the choice of tracks.
course = Track in the file
# Asks which track of a file is meant.
which-track = { $file } holds { $count } roads. Which one will you drive?
# Why a track cannot be chosen.
course-unusable = without heights, or too short
# Leaves what was asked about as it was.
leave-it = Cancel
# Asks for the order of several files.
which-order = { $count ->
    [one] 1 file: open it.
    [2] 2 files: what are they?
   *[other] { $count } files: in which order are they driven?
}
# What comes of it.
which-order-sentence = To join them, put them in the order of driving. They are joined from top to bottom. Where one ends more than 2 km from the start of the next, the order or a direction is wrong.
# Joins the files.
join = { $count ->
    [one] Open this file
   *[other] Join { $count } files
}
# Moves a file ahead.
leg-up = Drive { $name } earlier
# Moves a file back.
leg-down = Drive { $name } later
# Drives a file backwards.
turn-leg = Backwards
# Leaves a file out.
leave-leg = Leave { $name } out
# Asks whether files that lie on each other are the same road.
same-question = { $count } files lie on each other. Do they show the same road?
# What comes of each choice.
same-sentence = As the same road they become one, from the heights of all. Where these differ by more than they may be off, the steeper ones are used and the place is told. The plan is never faster than the faster of them alone. Nothing is combined unasked.
# Makes one road of recordings.
combine = Same road: combine { $count } recordings
# That two files of several lie on each other, and how to make one road of them.
two-alike = { $first } and { $second } lie on each other. To combine them into one road, leave the other files out.
# Asks the same of a file that was opened and one that was there before.
meets = { $new } lies on { $before }. Do they show the same road?
# Keeps the one before beside it.
compare-both = Compare: both side by side
# Puts both in order, to be driven one after the other.
join-both = Join: one after the other
# Of how many recordings a road was made.
combined = One road of { $count } recordings: { $files }
# Has these files in hand again.
take-apart = Take them apart
# What part of the road is shown, m from its start as recorded.
part-of = A part of the road: { $span } as recorded.
# Back to the whole road.
whole-road = Take the whole road
# One choice.
# Arguments: $number, $name, $unnamed bool, $route, $length
course-choice = { $unnamed ->
    [true] { $number } · unnamed { $route ->
        [true] route
       *[false] track
    } · { $length }
   *[false] { $number } · { $name } ({ $route ->
        [true] route
       *[false] track
    }) · { $length }
}
# Phase of work.
phase = { $phase ->
    [reading] Reading the file
    [surveying] Working out heights and grades
   *[planning] Working out gears, speeds and heat
}
# Starting, before anything is known.
starting = Starting
# Cancel button.
cancel = Cancel
# Closes a message.
close = Close
# Tries again.
try-again = Try again
# Where a part of the page stands that is still being loaded.
part-to-come = This part of the page is being loaded.
# A part of the page cannot be loaded; the button “Try again” follows.
part-failed = This part of the page did not arrive. Check the connection, then try again.
# Head of the box for a file that cannot be used.
trouble-head-file = “{ $name }” cannot be used
trouble-head-many-files = Too many files at once
trouble-head-not-a-file = That was not a file
trouble-head-built-in-missing = The invented road could not be loaded
trouble-head-cannot-start = The calculation could not be started
trouble-head-stopped = The calculation stopped on an error of its own
trouble-head-cancelled = Cancelled
trouble-head-truck = This truck cannot be worked out
trouble-head-truck-file = That truck file cannot be used
trouble-head-project-file = That project cannot be used
trouble-head-cannot-export = The file could not be saved
trouble-head-no-picture = The card could not be saved as a picture
# What to do about it.
trouble-many-files = Up to 20 files can be joined to one road, and up to 200 compared. Choose fewer.
trouble-not-a-file = Drop a GPX file, or use the button to choose one.
trouble-built-in-missing = The page itself works: choose a GPX file of your own.
trouble-cannot-start = The browser did not load the part that calculates. Reload the page; if that does not help, use a browser of the last few years with WebAssembly and workers switched on.
trouble-stopped = It was started again, and nothing that you entered is lost. Change the entry made last, or try again. For a report: { $detail }
trouble-cancelled = The figures below still belong to earlier entries. Change an entry, or try again, to work them out.
trouble-no-picture = This browser does not draw it. Print the card instead: printing to a file makes a PDF of it.
trouble-cannot-export = The part that writes it could not be loaded, or the browser did not allow saving. Reload the page, or try another browser.
# What to do about a file of a newer version, behind the sentence that it is one.
reload-for-newer = Reload the page for a newer one.
# What is still shown.
former-stays = The road shown is still the one before.
# The result below does not fit the entries.
not-current = The figures shown belong to earlier entries or to the road before.
# Before the name of the entry that is wrong.
check-entry = Check this entry:
# Writes the file with waypoints.
export = Save crests and gear changes as GPX
# What is in it.
export-sentence = Waypoints at each crest, foot, and change of gear or stage, for a device that shows them.
# End of the name of a file: name of the exported file.
export-name-ending = -descents.gpx
# Without a road.
no-road = No road yet
# What to do without a road.
no-road-sentence = Choose a GPX file with heights, or drop it anywhere on this page. It is read on this machine and goes nowhere else.
# Between places of escape ramps.
between-ramps = ,{ " " }

## What a language says of itself.

# Name of the links to the other languages.
languages = Other languages
# The link to this page, on those in other languages.
this-page = This page in English
# Title of the page, on its tab and where it is found.
page-title = Steadygrade: how to come down each hill
# What search engines show below the title.
page-description = How to come down each hill of a road with a heavy vehicle: gear, retarder stage, speed, brake heat. Worked out on your machine.
# Where JavaScript is switched off.
needs-script = This page works the road out in your browser, so it needs JavaScript and WebAssembly. Nothing you load leaves your machine.
# Behind it stands how much of the page is here, in per cent.
loading-page = Loading the page
# A file was dropped on the page while it loads; the file's name follows.
opens-then = It opens when the page is there:
# The page's program is missing, cut or broken.
loading-failed = The page did not arrive whole. Check the connection, then load it again.
# No byte for half a minute; loading goes on.
loading-stands = Nothing has arrived for half a minute. Wait, or check the connection and load the page again.
# Old browsers, and those in which it is switched off for safety.
cannot-run = This browser cannot run the page: WebAssembly is missing or switched off. Use another browser, or allow it.
# A button: it loads the page anew.
load-again = Load again
# Without a network, in place of a page that was never opened with one: the class view, or another language.
not-kept = This page is not kept on this machine, and there is no network. Open it once with a network: from then on it is kept.

## Words of the plan: verdicts, descents.

# Label of the answer with more mass.
heavier-label = 10 % heavier
# Label of brake heat.
heat-label = Brakes
# Head of the list.
descents-head = { $count ->
    [0] No descents
    [one] 1 descent
   *[other] { $count } descents
}
# Buttons of the order.
order = Order of the list
# Worst first.
worst-first = worst first
# As they come.
road-order = along the road
# Heads of the list's columns: descent, from, length, drop, mean, what the hill asks for, gear,
# stage, hold, brakes after a stop.
columns =
    .descent = descent
    .from = from
    .length = length
    .drop = drop
    .mean = mean
    .asks = asks for
    .gear = gear
    .stage = stage
    .hold = hold
    .if-stopped = after a hard stop
# A descent by its number.
descent = Descent { $number }
# Opens or closes the details.
details-of = Descent { $number }: details

## Words of one descent's details, and of its table.

# Label of the sign.
sign-label = As a road sign would state it
# What a sign would state.
sign = { $grade } for { $length }
# Label and sentence of the advice in full.
advice-label = How to come down
# Label of the way down.
way-label = Stages on the way down
# Label of reliefs.
relief-label = Where it eases
# Label of the grades.
grades-label = How steep
# Label of the curves.
curves-label = Curves
# Label of the climb.
climb-label = Up the same hill
# The descent ends where the road is not assessed.
cut-short = The descent is cut off where the road can no longer be assessed. How it goes on is not known.
# Heads: gear, speed range.
table-heads =
    .gear = gear
    .speeds = usable speeds
    .reserve = reserve at the top
# The row chosen.
table-chosen = advised

## Words of what follows from a plan: what would change it, how sure it is, what if.

# Label of what would change the answer.
change-label = To hold it
# Label of what is carried into a rise.
carried-label = Into the next rise
# Label of how sure it is.
sure-label = How sure
# Why it is not worked out.
too-long-to-be-sure = This road is too long to be driven 256 times: work out a part of it to learn how sure its plan is.
# While that is worked out.
studying = Working out how sure this is: { $share }
# What is still worked out.
not-yet = …
# Between two legs of a descent: a change up.
change-up = From { $from } change up to { $gear }
# Between two legs of a descent: a change down, for which the truck is slowed first.
slow-first = From { $from } slow to { $speed } with the retarder, then { $gear }, in by { $at }
# Short answer of what the study worker did not work out.
not-worked-out = not worked out
# Text of what the study worker did not work out.
not-worked-out-sentence = This was not worked out: the part of the page that looks further did not answer. It does not mean that all is well.
# Notice where the study worker did not answer.
study-missing = Not worked out: how sure this is, where to slow down, a retarder that fails, brakes out of adjustment.
# Label of the lost retarder.
lost-label = Retarder fails
# Label of brakes out of adjustment.
adjustment-label = Brakes out of adjustment
# Label of slowing ahead.
slowing-label = Slowing for what lies ahead
# What the list of it means.
slowing-sentence = Off the throttle and on full stage from there: the retarder alone brings the truck down to the speed. The service brakes stay cool. Signs and what you see come first.
# Heads of its columns: place, what, speed, where, gear, the service brakes alone.
slowing-heads =
    .place = at
    .what = what for
    .speed = down to
    .where = full stage from
    .gear = in gear
    .brakes = service brakes alone
# How many more there are.
slowing-more = { $count ->
    [one] And 1 more that asks for less.
   *[other] And { $count } more that ask for less.
}
# Head of the evidence.
evidence-head = Evidence
# What it is.
evidence-sentence = What the calculation is held against: values from outside this project, each with its source and how we came by it, and what comes out here. The same rows are the project’s tests.
# How many values there are, and how many are known to differ.
evidence-count = { $rows } values; { $known } of them differ from their source by more than its tolerance, and are marked so.
# Heads of its columns: what, the source's value, ours, the difference.
evidence-heads =
    .what = what
    .source = the source has
    .ours = here
    .difference = difference
# Mark of a value that is known to differ.
evidence-difference = differs
# It cannot be fetched.
evidence-missing = The rows could not be loaded. Open this again, or reload the page.
# Head of the panel in which a steady speed is entered.
measured-head = What held today
# What it is for.
measured-sentence = Did you hold a steady speed on a hill with the retarder alone, without throttle or service brakes? Enter what you saw, afterwards and parked. It tells what your retarder really gives with the mass and day entered above.
# Labels of gear, stage, engine speed, speed, grade and place.
measured-fields =
    .gear = Gear
    .stage = Stage
    .engine-speed = Engine speed
    .speed = Steady speed
    .grade = Grade, downhill
    .place = or: place on the road shown
# Hint of the place.
measured-place-hint = Where a place is given, grade and height there are taken instead.
# Works it out.
measure = Work it out
# A field that cannot be read.
measured-missing = Enter gear, stage, engine speed and steady speed, and a downgrade or a place on a descent of the road shown, all as numbers.
# Scales the truck's retarder by it.
use-measured = Plan with this
# Back to what its data say.
undo-measured = Back to the truck’s data
# What is in use now.
scale-in-use = Plans count on { $share } of the retarder’s data.

## Words of two roads side by side.

# Head of the section.
two-head = Two roads
# Keeps what is shown beside what comes next.
keep-beside = Keep to compare
# What that is good for.
keep-beside-sentence = To weigh two roads, two trucks or two days: what is shown now stays beside what you choose next.
# What to do next, while both are the same.
two-next = Both are the same still: choose another file, turn the road, or change truck or day.
# Ends the comparison.
end-two = Close
# Shows the road kept, and keeps the one shown.
swap = Swap the two
# What goes along with that.
swap-sentence = Each road takes its own truck, day and places along when the two are swapped.
# Heads of the columns: what, the first, the second, the difference.
two-heads =
    .what = {""}
    .kept = kept
    .shown = shown
    .difference = difference
# Label of a row.
two-row = { $row ->
    [truck] truck, day
    [worst] worst descent
    [descents] descents
    [hold] slowest hold speed
    [hottest] hottest brakes after a hard stop
    [braked] service brakes used on descents, for curves and places too
    [service] work of the service brakes
    [holding] work of retarder and engine
    [down] time down the descents
    [up] time on climbs of 2 % and more
    [crawl] slowest on a climb
    [time] time in all
    [rise] rises
    [fall] falls
    [length] length
    [curves] curves to slow for
    [checks] brake checks entered
    [ramps] escape ramps entered
    [parking] parking entered
    [blank] not assessed
    [fuel] fuel, about
   *[cost] cost at the rates entered
}
# No difference.
no-difference = the same
# That no row decides alone.
two-caution = No row decides alone, and none of it is permission to descend. What is not assessed is not in these figures. Signs, closures and your employer’s rules come first.
# Labels of the rates: fuel, time.
rate-labels =
    .fuel = Price of fuel
    .time = Cost of the truck and driver
# What a rate is for, in its units.
rate-units-metric =
    .first = a litre
    .second = an hour
rate-units-imperial =
    .first = a gallon
    .second = an hour
# Compares the files instead of joining them.
rank = { $count ->
    [one] List this road
    [2] Compare the 2 roads
   *[other] Compare these { $count } roads
}
# What the list is for.
ranked-sentence = Each both ways, for the truck and the day entered. Tick two to compare them, or press a name to open that road.
# A file that waits or is worked out.
ranking = being worked out
# Works the list out again for other entries.
rank-again = Truck or day have changed: work the roads out again
# Head of the list of roads, while they are worked out.
ranked-so-far = Roads: { $done } of { $count } worked out
# Head of that list.
ranked-roads = { $count } roads
# A road of the list that was given up before it was worked out.
given-up = given up
# Heads of the list, from left to right.
many-columns =
    .road = road
    .length = length
    .way = way
    .profile = profile
    .hardest = hardest
    .grade = grade
    .hold = gear, stage, hold
    .verdict = verdict
    .time = time
    .fuel = fuel
    .braking = braking
    .heat = hard stop
    .heights = heights
    .other = other way
# Label of the way in which the roads are driven.
driven-label = Way
# Ways in which the roads are driven.
driven-ways =
    .harder = harder
    .recorded = as recorded
    .reversed = reversed
# Quality of the heights in a word.
heights-word = { $class ->
    [good] good
    [fair] fair
   *[poor] poor
}
# Label of the choice of verdicts shown.
show-verdicts = Show
# A road without a descent, in a cell.
short-no-descent = no descent
# Compares the two rows that are ticked.
compare-ticked = { $count ->
    [one] Tick 1 more to compare
    [2] Compare 2
   *[other] Tick 2 to compare
}
# Turns a road of the list round.
turn-ranked = Turn { $name } round
# Ticks a road of the list.
tick-ranked = Tick { $name }
# Works out no more of the list.
stop-ranking = Stop
# Prints a list or a comparison.
print-list = Print
# Saves a list or a comparison for a spreadsheet.
save-list = Save as a table
# Brings the list to the front.
to-many = All { $count } roads
# Below the list: the limit of the brakes.
limit-of-list = limit { $limit }
# Below the list: what a question mark means.
blank-in-list = ? heights missing or wrong there: no advice
# End of the name of a file: the list, for a spreadsheet.
list-ending = -list.csv
# Beginning of the name of that file.
list-stem = roads
# End of the name of a file: the comparison, for a spreadsheet.
compared-ending = -compared.csv
# What the mark beside a figure means.
easier-mark = the easier one. There is no total: you weigh it.
# Beside a figure, for those who hear the page.
easier = easier
# Why one road rather than the other: the road shown, and in what it differs from the one kept.
reason = { $name }: { $parts }.
# The road shown differs in nothing that counts.
reason-none = { $name }: no difference in verdict, time, fuel or heat.
# Difference in time.
reason-time = { $more ->
    [true] { $figure } longer
   *[false] { $figure } shorter
}
# Difference in brake heat.
reason-heat = { $more ->
    [true] brakes { $figure } hotter after a hard stop
   *[false] brakes { $figure } cooler after a hard stop
}
# Difference in fuel.
reason-fuel = { $more ->
    [true] { $figure } more fuel
   *[false] { $figure } less fuel
}
# The slowest descents of both.
reason-hold = slowest { $shown } instead of { $kept }
# The verdicts of both.
reason-verdict = { $shown }, instead of: { $kept }
# Heads that only the spreadsheet has: file, crest of the hardest descent, limit of the brakes, what is not assessed, truck and day.
list-heads =
    .file = file
    .crest = crest
    .limit = limit
    .blank = not assessed
    .truck = truck, day

## Words of places and posted limits along the road.

# Head of the section.
places-head = Places
# The same in the list of sections.
places-nav = Places
# How places come on the road, and what none means.
places-sentence = { $count ->
    [0] None are on this road yet. That does not mean there are none: look for brake checks, escape ramps, signals and limits yourself.
    [one] One is on this road. There may be more.
   *[other] There may be more than these.
} They come from the file’s waypoints; put others where the cursor stands in the picture, or by their distance. They are kept on this machine.
# Puts a place where the cursor stands.
put-here = Mark a place here
# Label of the distance at which one is put.
put-at = Mark a place at
# Puts it there.
put = Add
# Label of the kind.
kind-label = Kind
# Label of the name.
name-label = Name
# Label of a distance, of its beginning, of its end.
at-label =
    .at = At
    .from = From
    .to = To
# Label of a limit's speed.
limit-label = Limit
# Beside a limit whose speed and length nobody entered.
set-the-limit = Speed and end are assumed, and count already. Set what the sign says.
# What to know of a quiet zone.
quiet-zone-caution = A sign here may forbid engine brakes. The plan still counts on the retarder: where the sign forbids it, go slower in a lower gear, and keep the service brakes cool.
# Takes it off the road.
take-off = Remove
# A thing that does not lie on the part of the road that is shown.
not-on-part = not on the part shown
# A distance that is not on the road; its ends as they are typed.
off-road = That is not on this road: it goes from { $first } to { $last } { $unit }.
# A stretch whose end does not lie behind its beginning.
no-stretch = A limit must end behind where it begins.
# No room for another.
too-many-things = A hundred is the most that fits. Remove one first.
# Draws the rows of all of so many.
show-all-places = Show all { NUMBER($count) }

## Words of the entries of truck and day.

# Head of the truck's entries.
truck-head = Truck
# Head of the day's entries.
day-head = Day
# Mark of an assumed value.
assumed = assumed
# What the mark means.
assumed-sentence = Values marked “assumed” have no printed source for this truck: put in your own.
# Help with an entry, in one sentence.
hint = { $entry ->
    [rated-power] As on the engine’s plate or in the papers; pull and the assumed retarder follow it.
    [governed-speed] Here the governor takes the fuel away; the box shifts up by itself about here. The wheels may turn the engine faster: see above.
    [top-gear-speed] Read off the dial on level road. It gives the axle ratio.
    [gross-mass] Truck, trailers and load together. Weigh it if you can.
    [retarder-peak-power] All stages on, at its best engine speed; 0 for none.
    [highest-engine-speed] As the maker allows with the wheels driving the engine.
    [reserve] More holding force than needed, kept for errors of mass and grade.
    [headwind] A tailwind is negative and pushes.
    [heat-limit] Highest brake temperature, one hard stop included.
    [brakes-at-start] Higher if you come from another hill.
    [speed-limit] Posted, or your own.
    [rolling-resistance] The low end: easy-rolling tyres push more downhill.
    [rollover-threshold] In g, from a tilt table; a high or loose load tips at less. Lower if in doubt.
    [superelevation] How far curves lean inwards; 0 where you do not know.
    [retarder-delay] It comes back so long after the clutch has closed.
    [retarding-scale] 100 unless what held today was measured.
    [short-power] What it gives for the short time below, from cold.
    [sustained-power] What the engine’s coolant carries away for good. Plans count on this.
    [sustained-speed] Below it the coolant is pumped more slowly and carries less.
    [hot-share] Torque of the hot retarder over that of the cold one. Plans count on hot.
    [lock-up-gear] In lower gears the open converter lets the engine hold nothing.
    [brake-check-stop] Time to cool at each brake check on the road; 0 drives past.
    [shaft-torque] All stages on, cold, at the shaft speed below.
    [shaft-speed] Turns of the propeller shaft at which the torque above is measured.
    [short-time] So long it lasts from cold before the coolant limits it.
    [warm-up-time] After so long at work it has lost two thirds of what it loses.
    [lock-up-speed] Below it the converter opens and the engine holds nothing.
    [drive-axle-mass] What stands on the driven axles: it decides how much they can hold.
    [rolling-radius] Way of one turn of a loaded wheel, over 2π; the list of sizes fills it in.
    [wheel-inertia] Of all wheels together; it makes the truck seem heavier.
    [drag-area] Drag coefficient times frontal area; a smaller one pushes more downhill.
    [displacement] Swept volume of all cylinders: the unfuelled engine holds in proportion.
    [lowest-engine-speed] Below it engine and retarder are not counted on.
    [axle-ratio] Turns of the shaft for one of the wheels; it stands on the axle’s plate.
    [axle-efficiency] Losses help to hold: an axle with fewer holds less.
    [retarder-peak-speed] Engine speed at which it holds most.
    [retarder-exponent] Its power falls with this power of engine speed: the larger, the faster.
    [retarder-cut-out] Below this engine speed it switches itself off.
    [shifts-up-speed] Above it the box shifts up and the retarder lets go; mostly the governed speed.
   *[air-temperature] Cold air is denser; brakes cool to it.
}
# That this is no number.
not-a-number = “{ $typed }” is not a number.
# That this number is outside its range.
out-of-range = { $typed } is out of range.
# To enter a value of this range.
enter-from = Enter a value from { $range }.
# Label of the gears.
gears = Gear ratios
# Hint of the gears.
gears-hint = First gear first, with blanks between.
# Label of the stages.
stages = Retarder stages
# Hint of the stages.
stages-hint = Share of full retarding by stage in per cent, weakest first, the last 100.
# Label of the retarder table.
retarder-table = Retarder by speed and stage
# The same of a table of torque at the shaft.
shaft-table-hint = A line a speed: shaft speed, a colon, then the torque of each stage in N·m, weakest first. Outside the table it counts as off.
# The same of a table of power at the engine.
engine-table-hint = A line a speed: engine speed, a colon, then the power of each stage in kW, weakest first. Outside the table it counts as off.
# Label of the retarder kinds.
retarder-label = Retarder
# Label of the gearboxes.
transmission-label = Gearbox
# Label of the load.
load-label = Load
# That the choice of load leaves the mass as it is entered, and what is to be done.
mass-stays = This does not change the mass: { $mass } is still entered. Enter what the truck weighs now.
# Label of the gear sets.
gear-set-label = Number of gears
# A gear set by its number of gears, and whether the top one is an overdrive.
gear-set = { $gears } gears, { $overdrive ->
    [true] overdrive
   *[false] direct on top
}
# Gears that are none of them.
own-gears = as typed below
# Label of the tyre sizes.
tyre-label = Tyres of the driven axles
# A rolling radius that is none of them.
own-tyre = rolling radius as typed
# Name of the picture of the truck's power.
curves-name = Power by engine speed
# What it shows, in this unit.
curves-about = Power in { $unit } by engine speed: thick what it pulls with, dashed what engine and retarder hold with, stage by stage. What a retarder on the shaft gives for good is drawn for the direct gear.
# Head of the trucks that are kept.
own-trucks = Your own trucks
# Label of the truck's name.
truck-name = Name of this truck
# Keeps the truck entered under its name.
keep-truck = Keep it under this name
# Gives a kept truck the name entered.
rename-truck = Rename “{ $name }” to this
# Takes a kept truck.
take-truck = Plan with “{ $name }”
# Takes a kept truck out of the list.
remove-truck = Remove “{ $name }”
# Undoes the last change of the list.
undo = Undo
# Remove, on a button beside the name.
remove = Remove
# Why a truck cannot be kept.
no-name = Give it a name first.
# Why no further truck can be kept.
too-many-trucks = No room for another truck: remove one first.
# Saves the truck as a file.
save-truck = Save as a file
# Opens a truck file.
open-truck = Open a truck file
# Name of a file of a truck without a name.
truck-file-stem = own
# End of the name of a file of a truck.
truck-file-name-ending = -truck.json
# Label of the axle groups.
axle-groups = Braked axles
# Label of the service brakes.
service-brakes-label = Service brakes
# Label of the way down that leads.
lead-label = Way down
# What it means, in a sentence.
lead-hint = { $lead ->
    [usual] On a long hill the gear may change by places that are named, where that saves minutes.
    [one-gear] One gear from the crest to the foot, and its speed.
   *[untouched] One gear in which the retarder alone holds every recorded pitch, also where the heights are in doubt.
}
# Back to the usual day.
usual-day = Usual day
# Where entries are kept.
kept-here = Entries are kept in this browser only.

## Words of the road: its quality, what was repaired, what was not assessed.

# How good they are, and over which length a grade holds.
grade-holds = { $class ->
    [good] Heights are good: a grade holds over { $base } or more.
    [fair] Heights are fair: a grade holds over { $base } or more; shorter steps are not seen.
   *[poor] Heights are poor: a grade holds over { $base } or more, and is advisory only. Check it against the signs.
}
# How much neighbours differ as recorded and after smoothing, percentage points.
roughness = Nine in ten neighbouring stretches of 100 m differ by no more than { $before } points as recorded, { $after } after smoothing.
# Head of the findings.
findings-head = { $count ->
    [one] 1 thing noticed or repaired in the file
   *[other] { $count } things noticed or repaired in the file
}
# Without findings.
no-findings = Nothing had to be repaired.
# Head of the spans that are not assessed.
unassessed-head = { $count ->
    [one] 1 stretch without advice: heights missing or wrong
   *[other] { $count } stretches without advice: heights missing or wrong
}
# Name of the button that shows a place.
show-place = Show { $place } on the road
# How much could not be assessed.
left-blank = Heights missing or wrong on { $length }. No advice there.
# The same, and how much lower the road is behind it.
left-blank-lower = Heights missing or wrong on { $length } ({ $lower } of drop). No advice there.

## Words of the form that do not name an entry.

# Name of the engine speed in top gear, with the road speed at which it is read.
top-gear-speed = { $units ->
    [metric] Engine speed at 80 km/h in top gear
   *[imperial] Engine speed at 50 mph in top gear
}
# What axle ratio follows from it.
is-axle-ratio = That is an axle ratio of { $ratio }.
# Why no axle ratio can follow from it, and what to look at.
no-axle-ratio = With these gears and tyres that would be an axle ratio of { $ratio }; axles have { $range }. Look at the engine speed, the top gear and the tyres.
# Help with the tyre sizes.
tyre-hint = It stands on the sidewall. Worn tyres roll a little shorter.
# Help with the gear sets.
gear-set-hint = Count the forward gears. “Overdrive”: the top gear turns the shaft faster than the engine.
# Help with the gearboxes.
transmission-hint = Automated: no clutch pedal, but a clutch. Converter: it pulls away without one.
# A retarder on the shaft, or a table of its own instead.
on-shaft = { $on-shaft ->
    [nothing] none
    [hydrodynamic] hydrodynamic retarder
    [electromagnetic] electromagnetic retarder
    [engine-table] my own table, at the engine
   *[shaft-table] my own table, at the shaft
}
# Help with it.
on-shaft-hint = A device on gearbox or shaft. A hydrodynamic one warms the coolant; an electromagnetic one has a heavy rotor with fins.
# The question whether there is an engine brake.
at-engine-label = Also an engine brake?
# An engine brake.
at-engine = { $at-engine ->
    [nothing] none
    [exhaust-flap] exhaust flap
   *[compression] engine brake
}
# Help with it.
at-engine-hint = Exhaust flap: a flap in the exhaust pipe. Engine brake: the exhaust valves work, loudly. In doubt take the flap: it holds less.
# Label of the lever's positions.
lever-label = Positions of its lever, without off
# Help with them.
lever-hint = Each is taken to give the same step. The shares can be entered below.
# Shares that are none of an even lever.
own-lever = as typed below
# Label of the shape of the engine brake's power.
shape-label = Power of the engine brake by engine speed
# A shape: by an exponent, or as declared.
shape = { $by-exponent ->
    [true] by an exponent
   *[false] as engines declare it
}
# Help with it.
shape-hint = As engines declare it unless you have figures of your own.
# The axles of a group.
axles-of = { $axle-place ->
    [steer] Steered axles
    [drive] Driven axles and beside them
   *[trailer] Trailer axles
}
# Label of the brakes of a group.
brakes-of = { $axle-place ->
    [steer] Brakes of the steered axles
    [drive] Brakes of the driven axles
   *[trailer] Brakes of the trailer
}
# A kind of brake.
brake = { $brake ->
    [drum] drum
   *[disc] disc
}
# No axles: no trailer.
without-trailer = no trailer
# Help with the axles.
axles-hint = Count the axles with brakes. How they share the work is assumed.
# Before what a wrong value costs: by how much it is wrong.
wrong-by = { $by } wrong
# A difference in gears, in a list of differences.
so-many-gears = { $gears ->
    [one] { $gears } gear
   *[other] { $gears } gears
}
# A difference in stages, in a list of differences.
so-many-stages = { $stages ->
    [one] { $stages } stage
   *[other] { $stages } stages
}
# That neither gear nor speed changes.
no-other = neither gear nor speed changes
# What another verdict means, in short.
other-verdict = { $verdict ->
    [retarder-holds] the retarder would hold it
    [little-in-reserve] little in reserve
    [needs-service-brakes] needs the service brakes
   *[no-safe-speed] no safe speed
}
# That what a wrong value costs is worked out when a plan is shown.
worth-waits = What a wrong value costs: told when a plan is shown.
# That it is being worked out.
worth-at-work = What a wrong value costs: being worked out.
# That the road has no descent to try it on.
worth-no-descent = What a wrong value costs: this road has no descent to try it on.
# That it could not be worked out.
worth-not = What a wrong value costs: could not be worked out.

## Words of the frame of the page: its views, the bar, the answer column.

# Names of the views, as they stand in the bar.
view-names =
    .road = Road
    .descents = Descents
    .two = Two roads
    .card = Card
    .more = More
# Opens truck and day, in the row of a phone.
truck-tab = Truck
# What the button with the name of the road does, for screen readers.
road-button = Road: { $name }. Choose another
# What the button with the truck does, for screen readers.
truck-button = Truck and day: { $facts }. Change
# Head of the panel of the road.
road-panel = Road
# Leads to the teaching roads.
teaching-roads = Teaching roads
# Leads to the card, beside the descents.
cab-card = Cab card
# The caution that always stands below the answer.
caution-line = <strong>A planning aid.</strong> Signs and law come first. It can’t see your brakes.
# Opens all cautions.
all-cautions = All cautions
# Behind the number of the descent in hand.
of-count = of { $number }
# Mark of the descent that asks for most.
hardest = hardest
# Goes to the descent before.
descent-before = The descent before
# Goes to the next descent.
descent-after = The next descent
# Names of the figures of a descent: what to do, then what it is.
hand-figures =
    .gear = Gear
    .stage = Stage
    .hold = Hold
    .from = from
    .long = long
    .down = down
    .grade = grade
    .steepest = steepest
# When to be in the gear.
be-in-gear = Be in gear <strong>before the crest, { $place }</strong>.
# The same where the road begins on the hill.
be-in-gear-at-start = Be in gear <strong>before you start</strong>.
# How long to stay in it.
stay-to = Stay in it to { $place }.
# Mark of an answer to former entries.
old-answer = old answer
# Opens the table of gears and stages.
all-gears = All gears
# Opens what else is known of the descent.
about-descent = This descent
# A curve on the way.
way-curve = { $hairpin ->
    [true] hairpin
   *[false] curve
}
# Head of the settings.
settings-head = Settings
# Changes truck and day, on a phone.
change-truck = Change
# Shows the stretches of which nothing is said.
show-blank = Show them
# Stands where the first answer will be.
finding-descents = Finding the descents

## Words of the drawer of truck and day.

# Its head.
drawer-head = Your truck, your day
# Questions a driver answers.
which-truck = Which truck?
how-heavy = How heavy?
which-retarder = Which retarder?
what-surface = What surface?
# A truck to begin with, without its mass.
truck-type = { $preset ->
    [five-axle36] Five axles, drums
    [five-axle40] Five axles, discs
    [five-axle40-both] Five axles, two retarders
    [five-axle-empty] Five axles, empty
    [six-axle44] Six axles
    [drawbar40] Drawbar trailer
    [rigid18] Two axles
    [tipper26] Tipper
    [refuse26] Refuse truck
    [b-double] Double
    [coach] Coach
   *[coach-converter] Coach, converter
}
# Leads to the trucks that a person kept.
my-trucks = My trucks
# Buttons beside the mass.
lighter-by = { $by } lighter
heavier-by = { $by } heavier
# Answers to the question which retarder.
retarder-answers =
    .engine = engine brake
    .exhaust = exhaust brake
    .hydrodynamic = hydrodynamic retarder
    .electric = electric retarder
    .both = two together
    .none = no retarder
# Leads to the entries of the retarder, where two work together or a table says it all.
retarder-change = change it
# Head of the rows of all other entries.
experts = For experts
# What the star means, and what stands behind the entries.
experts-about = * assumed: put in your own. Each entry says what a wrong value costs on the hardest descent.
# Rows of entries.
expert-rows =
    .gearbox = Gearbox
    .engine = Engine
    .retarder = Retarder power
    .rolling = Tyres, axles and brakes
    .tune = Tune it
# What a row says of its entries: gears and axle ratio.
gears-now = { $gears } gears · axle { $ratio }
# Braked axles.
axles-now = { $count ->
    [one] { $count } axle
   *[other] { $count } axles
}
# Air, and brakes at the start.
day-now = air { $air } · brakes { $brakes } at the start
# Its own trucks, the truck file, the link.
trucks-now = keep, open, hand on
# Closes the drawer: truck and day are as they should be.
done = Done
# Stands with the answer until a truck was chosen or entered.
example-truck = Example truck. Not your truck?
# Button beside it, which opens the drawer.
enter-yours = Enter yours
# Where the road starts on the hill: to enter how hot the brakes are.
enter-brake-heat = Enter their temperature under Day.
# Button that takes the example as one's own truck.
this-is-mine = This is my truck
# Stands on the card and in files until a truck was chosen or entered.
example-export = Example truck, perhaps not yours. Do not drive by this: enter your truck first.
