# An invented language, for the tests of texts alone. Its numbers, plurals, lists and letters are unlike those of English.

decimal-sign = ,
group-sign = ~
group-from-digits = 4

plural-one = n % 10 = 1 and n % 100 != 11
plural-few = n % 10 = 2..4 and n % 100 != 12..14
plural-many = n = 1000000 or v = 1

list-next = { $list }; { $next }
list-and = { $list }; še { $next }
list-or = { $list } älle { $next }

quotation = »{ $text }«
