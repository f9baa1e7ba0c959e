package edgewright.texts;

import java.util.List;

/**
 * A value under the name that it has in a message. How it is written is decided by what it is: a {@link #count} is an amount
 * and may be grouped, a {@link #number} names one thing and never is.
 */
public final class Arg {
    private final String name;
    private final Value value;

    private Arg(String name, Value value) {
        this.name = name;
        this.value = value;
    }

    /** A text that is put in as it is. */
    public static Arg arg(String name, String text) {
        return new Arg(name, new Text(text));
    }

    /** How many there are. The message may choose its words by it: by the very number, or by its plural category. */
    public static Arg count(String name, long amount) {
        return new Arg(name, new Count(amount));
    }

    /** How many there are in plain digits, as instructions have them. The message may choose its words by it likewise. */
    public static Arg plain(String name, long amount) {
        return new Arg(name, new Plain(amount));
    }

    /** The number of one thing, such as a round, a stitch or a line: plain digits. */
    public static Arg number(String name, long number) {
        return arg(name, Long.toString(number));
    }

    /** A measure with that many digits after its decimal sign. */
    public static Arg decimal(String name, double number, int digits) {
        return new Arg(name, new Decimal(number, digits));
    }

    /** A measure with no more digits after its decimal sign than it needs, and with that many at most. */
    public static Arg shortest(String name, double number, int mostDigits) {
        return new Arg(name, new Shortest(number, mostDigits));
    }

    /** A list that ends in 'and'. */
    public static Arg and(String name, List<?> parts) {
        return new Arg(name, new Joined(parts, "list-and"));
    }

    /** A list that ends in 'or'. */
    public static Arg or(String name, List<?> parts) {
        return new Arg(name, new Joined(parts, "list-or"));
    }

    /** A list without a word before its last part. */
    public static Arg commas(String name, List<?> parts) {
        return new Arg(name, new Joined(parts, "list-next"));
    }

    /** One of a few cases, by whose name the message chooses its words. */
    public static Arg choice(String name, Enum<?> oneOf) {
        return arg(name, oneOf.name());
    }

    String name() {
        return name;
    }

    /** How the value stands in a message. */
    String written(Language language) {
        return value.written(language);
    }

    /** The names of the cases that hold for this value, the closest first. */
    List<String> cases(Language language) {
        if (value instanceof Count count) {
            return List.of(Long.toString(count.amount()), language.plural(count.amount()));
        }
        return value instanceof Plain plain
                ? List.of(Long.toString(plain.amount()), language.plural(plain.amount()))
                : List.of(written(language));
    }

    private interface Value {
        String written(Language language);
    }

    private record Text(String text) implements Value {
        @Override
        public String written(Language language) {
            return text;
        }
    }

    private record Count(long amount) implements Value {
        @Override
        public String written(Language language) {
            return language.count(amount);
        }
    }

    private record Plain(long amount) implements Value {
        @Override
        public String written(Language language) {
            return Long.toString(amount);
        }
    }

    private record Decimal(double number, int digits) implements Value {
        @Override
        public String written(Language language) {
            return language.decimal(number, digits);
        }
    }

    private record Shortest(double number, int mostDigits) implements Value {
        @Override
        public String written(Language language) {
            return language.shortest(number, mostDigits);
        }
    }

    private record Joined(List<?> parts, String lastJoin) implements Value {
        @Override
        public String written(Language language) {
            return language.joined(parts, lastJoin);
        }
    }
}
