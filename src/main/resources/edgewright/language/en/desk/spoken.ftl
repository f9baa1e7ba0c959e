# The chart as a table that is read out.

table-summary = A row for each round, the innermost first; a column for each stitch of the side in working order.
table-summary-corner = A row for each round, the innermost first; the columns are the stitches of the side before the corner in working order, then those of the side after it.
table-column = Column { $column }
