a = One { $name }
b = { $count ->
    [2] two
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
