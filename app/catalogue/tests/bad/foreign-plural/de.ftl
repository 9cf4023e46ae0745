a = One { $name }
b = { $count ->
    [one] one
    [few] some
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
