-gear = Gang
still = Ruhig
heads =
    .first = eins
    .second = zwei
files = { $count ->
    [one] { $count } Datei
   *[other] { $count } Dateien
} von { $all }
how = { $how ->
    [up] hinauf
   *[other] hinunter
}
go = { how } { $now ->
    [true] jetzt
   *[false] später
}
decides = <strong>{ -gear } { $gear }</strong> und { $count ->
    [one] eins
   *[other] { $count }
}.
