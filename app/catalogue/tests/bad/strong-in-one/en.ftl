### $count usize
### $how How
### $now bool

a = One { $name }
b = { $count ->
    [one] one
   *[other] { $count }
}
c = { $how ->
    [up] up
   *[down-hill] down
}
d =
    .x = one
    .y = two
e = { $now ->
    [true] now
   *[false] later
}
