untitled = Skriven mönster
contents = Innehåll
chart = Rutnät
fabric = Bården som den ser ut: { $across } ovan, { $down } vid sidan.
picture = En hörna še början av två sidor.
both-title = { $one } / { $other }
both-step = { $first }: { $one } { $second }: { $other }
both-terms = { $one } ock { $other }
