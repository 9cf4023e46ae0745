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
e = { $now ->
    [true] now
   *[false] later
}
