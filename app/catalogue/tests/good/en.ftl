### $count usize
### $how How
### $now bool
### $number usize

-gear = gear
# A line.
still = Still – “{ "{" }”
heads =
    .first = one
    .second = two{" "}
# Arguments: $count, $all
files = { $count ->
    [one] { $count } file
   *[other] { $count } files
} of { $all }
how = { $how ->
    [up] up
   *[down-hill] down
}
go = go { $how ->
    [up] up
   *[down-hill] down
}, { $now ->
    [true] now
   *[false] later
}, { NUMBER($number) }
# Arguments: $gear, $count
decides = { $count ->
    [one] One
   *[other] { $count }
}: <strong>{ -gear } { $gear }</strong>, <strong>now</strong>.
