untitled = Skriven mönster
contents = Innehåll
chart = Rutnät
picture = En hörna še början av två sidor.
