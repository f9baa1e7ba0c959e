# What holds of English everywhere. UK and US differ in the words of the trade alone; those stand in uk/ and us/.

# The tags of BCP 47 of words in either terms.
dialect-UK = en-GB
dialect-US = en-US

# Amounts are grouped from five digits on: 1201 stitches, 12,010 stitches. What names a thing (round 1201) never is.
decimal-sign = .
group-sign = ,
group-from-digits = 5

# In the notation of CLDR, for each category but other:
# https://www.unicode.org/cldr/charts/latest/supplemental/language_plural_rules.html
plural-one = i = 1 and v = 0

# $list: what has been joined so far
list-next = { $list }, { $next }
list-and = { $list } and { $next }
list-or = { $list } or { $next }

quotation = '{ $text }'
