package edgewright.words.read;

import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Knows the yarns of a pattern that is being read: those of its list, or, where it has none, those that its rounds name, in
 * the order in which they are named.
 */
final class YarnReader {
    private final Grammar grammar;
    private final List<PatternYarn> yarns;
    private final boolean listed;
    /** What the yarns of a list are called, found when it is first asked for. */
    private List<Spelling> known = List.of();

    YarnReader(Grammar grammar, List<PatternYarn> listed) {
        this.grammar = grammar;
        this.yarns = new ArrayList<>(listed);
        this.listed = !listed.isEmpty();
    }

    /** The yarns, once all rounds are read. */
    List<PatternYarn> yarns() {
        return List.copyOf(yarns);
    }

    /** Takes the yarn of a round after its number; answers with its id. */
    String take(TokenCursor cursor) {
        List<String> before = grammar.listed("yarn-before");
        if (listed) {
            do {
                cursor.skip(before);
                cursor.skipPartings();
            } while (cursor.isSign(before));
            return takeListed(cursor);
        }
        if (!cursor.isAfter(before) && !cursor.isSign(before)) {
            throw cursor.stop("yarn");
        }
        cursor.skip(before);
        return takeNew(cursor);
    }

    /** Takes a yarn that stands alone in a cell; answers with its id. */
    String takeAlone(TokenCursor cursor) {
        return listed ? takeListed(cursor) : takeNew(cursor);
    }

    /** Takes the yarns of some rounds after their numbers, at least one; answers with their ids. */
    List<String> takeList(TokenCursor cursor) {
        List<String> between = grammar.listed("yarn-between");
        List<String> ids = new ArrayList<>(List.of(take(cursor)));
        while (cursor.isSign(between)) {
            int mark = cursor.mark();
            cursor.next();
            Optional<String> next = listed ? listedHere(cursor) : Optional.of(takeNew(cursor));
            if (next.isEmpty()) {
                cursor.reset(mark);
                break;
            }
            ids.add(next.get());
        }
        return ids;
    }

    private String takeListed(TokenCursor cursor) {
        return listedHere(cursor).orElseThrow(() -> noneOfTheYarns(cursor));
    }

    private ReadingStopped noneOfTheYarns(TokenCursor cursor) {
        List<String> names = yarns.stream()
                .map(yarn -> yarn.name().isEmpty() ? byId(yarn) : yarn.name())
                .toList();
        return cursor.stopAt(cursor.peek(), Expectation.of("yarnOf", grammar.commas(names)));
    }

    private Optional<String> listedHere(TokenCursor cursor) {
        int start = cursor.mark();
        if (known.isEmpty()) {
            known = spellings();
        }
        // As it stands first: two ids may differ in nothing but capital letters.
        for (boolean asItStands : new boolean[] {true, false}) {
            for (Spelling spelling : known) {
                boolean taken = asItStands ? cursor.takeExactly(spelling.text()) : cursor.take(spelling.phrases());
                if (taken && endsHere(cursor)) {
                    return Optional.of(spelling.yarn().id());
                }
                cursor.reset(start);
            }
        }
        return Optional.empty();
    }

    private static boolean endsHere(TokenCursor cursor) {
        return cursor.atEnd()
                || cursor.atLineStart()
                || cursor.peek().kind() == Token.Kind.SIGN
                || cursor.is("in-turn-word");
    }

    private record Spelling(String text, PatternYarn yarn) {
        Spellings phrases() {
            return Spellings.of(Stream.of(text));
        }
    }

    /** 'yarn A', then the names that only one yarn has, then the mere ids; longer ones first. */
    private List<Spelling> spellings() {
        List<Spelling> spellings = new ArrayList<>();
        for (PatternYarn yarn : yarns) {
            add(spellings, byId(yarn), yarn);
        }
        List<Spelling> names = new ArrayList<>();
        for (PatternYarn yarn : yarns) {
            boolean only = yarns.stream()
                            .filter(other -> Token.lower(other.name()).equals(Token.lower(yarn.name())))
                            .count()
                    == 1;
            if (only) {
                add(names, yarn.name(), yarn);
            }
        }
        names.sort(
                Comparator.comparingInt((Spelling spelling) -> spelling.text().length())
                        .reversed());
        spellings.addAll(names);
        for (PatternYarn yarn : yarns) {
            add(spellings, yarn.id(), yarn);
        }
        return spellings;
    }

    private static void add(List<Spelling> spellings, String text, PatternYarn yarn) {
        if (!text.isBlank()) {
            spellings.add(new Spelling(text, yarn));
        }
    }

    private String byId(PatternYarn yarn) {
        return grammar.yarnById(yarn.id());
    }

    /** A yarn that has not been listed: everything up to the end of the line or of the phrase is its name. */
    private String takeNew(TokenCursor cursor) {
        Token first = cursor.peek();
        if (cursor.atEnd()) {
            throw cursor.stop("yarn");
        }
        List<String> ends = grammar.listed("yarn-ends");
        StringBuilder name = new StringBuilder();
        int column = first.column();
        while (!cursor.atEnd()
                && cursor.peek().line() == first.line()
                && !cursor.isSign(ends)
                && !(name.length() > 0 && cursor.is("in-turn-word"))) {
            Token token = cursor.next();
            name.append(token.column() > column && name.length() > 0 ? " " : "").append(token.text());
            column = token.column() + token.text().length();
        }
        if (name.length() == 0) {
            throw cursor.stop("yarn");
        }
        return idOf(name.toString());
    }

    private String idOf(String name) {
        for (PatternYarn yarn : yarns) {
            String called = yarn.name().isEmpty() ? byId(yarn) : yarn.name();
            if (Token.lower(called).equals(Token.lower(name))) {
                return yarn.id();
            }
        }
        PatternYarn yarn = unnamed(name);
        yarns.add(yarn);
        return yarn.id();
    }

    /** 'yarn A' is the yarn with that id and no name; any other name gets the first letter that is free. */
    private PatternYarn unnamed(String name) {
        Optional<String> id = Token.of(name, 1).stream()
                .filter(token -> token.kind() != Token.Kind.SIGN)
                .map(Token::text)
                .filter(each -> Token.lower(grammar.yarnById(each)).equals(Token.lower(name)))
                .filter(this::isFree)
                .findFirst();
        if (id.isPresent()) {
            return new PatternYarn(id.get(), "");
        }
        String letter = IntStream.iterate(0, n -> n + 1)
                .mapToObj(n -> n < 26 ? String.valueOf((char) ('A' + n)) : "Y" + n)
                .filter(this::isFree)
                .findFirst()
                .orElseThrow();
        return new PatternYarn(letter, name);
    }

    private boolean isFree(String id) {
        return yarns.stream().noneMatch(yarn -> yarn.id().equals(id));
    }
}
