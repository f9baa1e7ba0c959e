package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.TalkReader;
import edgewright.words.grammar.Token;
import edgewright.words.grammar.WordSet;
import edgewright.words.setup.Part;
import edgewright.words.terms.Bars;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Cuts a page into headings, rounds and paragraphs. */
final class Chunks {
    private static final Set<Concept> GOES_ON = Concept.andEdges(
            Concept.STAR,
            Concept.TWO_STARS,
            Concept.OPEN,
            Concept.NUMBER,
            Concept.SHORT,
            Concept.TALL,
            Concept.CHAIN,
            Concept.STITCH_NAME,
            Concept.REPEAT,
            Concept.EQUALS,
            Concept.CORNER,
            Concept.AS,
            Concept.BACK_ONLY,
            Concept.MISS,
            Concept.IN,
            Concept.STITCH_COUNT,
            Concept.TOTAL,
            Concept.UNCLEAR_NAME);

    /** A line that is shorter ends where its writer ended it. */
    private static final int SHORTEST_WRAPPED = 45;

    private static final int SHORTEST_BEFORE_CAPITAL = 60;

    private static final Pattern LABEL = Pattern.compile("^\\s*\\S+(?: \\S+){0,3}\\s?[:=]");

    /** A place in a film, as in '2:15 the first two rounds'. */
    private static final Pattern TIME = Pattern.compile("^\\s*\\d{1,2}:\\d\\d\\s");

    private final Page page;
    private final Parts parts;
    private final Lexicon lexicon;
    private final Account.Builder account;
    /** Whether small letters at the beginning of a line say nothing, since most lines begin so. */
    private final boolean smallLetters;

    private final Pattern pageNumber;
    private final TalkReader talk;
    private final String roundWord;
    private final WordSet verbs;
    private final List<Chunk> chunks = new ArrayList<>();
    private Part part = Part.HEAD;
    private boolean open;
    private boolean inRounds;

    Chunks(Page page, Parts parts, Lexicon lexicon, Account.Builder account, Language language) {
        this.page = page;
        this.parts = parts;
        this.lexicon = lexicon;
        this.account = account;
        this.smallLetters = isInSmallLetters(page);
        this.pageNumber = Pattern.compile("(?i)\\s*-?\\s*(?:" + WordSet.alternatives(language, "PAGE_WORDS")
                + ") \\d{1,3}(?: *(?:/|" + WordSet.alternatives(language, "PAGE_OF") + ") *\\d{1,3})?\\s*-?\\s*");
        this.talk = new TalkReader(language);
        this.verbs = WordSet.of(language, "ROUND_VERBS");
        this.roundWord = Bars.parted(language.messages(Lexicon.BUNDLE).text(Concept.ROUND.name()))
                .get(0);
    }

    private static boolean isInSmallLetters(Page page) {
        List<Integer> first = page.lines().stream()
                .filter(line -> !line.isBlank())
                .map(line -> line.text().strip().codePointAt(0))
                .filter(Character::isLetter)
                .toList();
        return first.stream().filter(Character::isLowerCase).count() > first.size() * 2L / 3;
    }

    /** The chunks in the order of the text; headings and the title go to the account alone. */
    List<Chunk> cut(int titleLine) {
        List<Page.Line> lines = page.lines();
        for (int i = 0; i < lines.size(); i++) {
            Page.Line line = lines.get(i);
            // The foot of a page may stand within a round, which goes on after it.
            boolean foot = pageNumber.matcher(line.text()).matches();
            if (line.number() == titleLine) {
                account.set(line.number(), LineKind.TITLE);
                open = false;
            } else if (line.isBlank() || line.isRule()) {
                open = false;
            } else if (!foot
                    && !takeHeading(
                            line, i + 1 < lines.size() && lines.get(i + 1).isRule())) {
                take(line);
            }
        }
        return chunks;
    }

    /** Whether the words of a round begin here, or rounds to be repeated. */
    private boolean beginsRound(List<Token> tokens) {
        List<Lexeme> words = lexicon.read(tokens);
        Cursor cursor = new Cursor(words);
        if (cursor.are(Concept.REPEAT, Concept.ROUND, Concept.NUMBER)) {
            return true;
        }
        boolean base =
                cursor.are(Concept.ROUND, Concept.NUMBER) && cursor.peek(1).number() == 0;
        return RoundTitle.begins(cursor) && !base && !isAboutRound(words);
    }

    /** 'Round 5 is the first with long stitches': words to people that begin as a title does. */
    private boolean isAboutRound(List<Lexeme> words) {
        List<Lexeme> sentence = Chunk.sentences(words).get(0);
        // Before the rounds, 'round 3 is ...' is no title: what it says must be understood as a sentence.
        boolean said = !inRounds
                && sentence.size() > 2
                && verbs.has(sentence.get(2))
                && sentence.stream()
                        .noneMatch(word -> word.is(Concept.COLON) || Concept.STITCHES.contains(word.concept()));
        return said || talk.of(sentence).isPresent() || tellsYarns(sentence);
    }

    /** 'Round 1 is in A, round 2 in B': a title goes on with a verb and the yarn, and no stitch follows. */
    private boolean tellsYarns(List<Lexeme> sentence) {
        return sentence.stream().anyMatch(word -> verbs.has(word))
                && sentence.stream().anyMatch(word -> word.is(Concept.YARN_NAME))
                && sentence.stream().filter(word -> word.is(Concept.ROUND)).count() > 1
                && sentence.stream()
                        .noneMatch(word -> Concept.STITCHES.contains(word.concept()) || word.is(Concept.AS));
    }

    private boolean takeHeading(Page.Line line, boolean underlined) {
        List<Token> tokens = line.tokens();
        if (tokens.isEmpty()) {
            return true;
        }
        if (beginsRound(numbered(tokens))) {
            return false;
        }
        Optional<Part> known = parts.headed(line.text());
        boolean free = part != Part.HEAD && part != Part.ROUNDS && !open && isShortTitle(line);
        boolean sets = free || line.hashes() || underlined || known.isPresent() || Parts.isCapitals(line.text());
        if (!sets) {
            return false;
        }
        // A heading of their own says nothing of what stands below it, so all of that must be understood.
        part = known.orElse(inRounds ? Part.ROUNDS : Part.HEAD);
        account.set(line.number(), LineKind.HEADING);
        open = false;
        return true;
    }

    /** A short line with no sign at its end and nothing for hands, as headings are; what stands below it must be understood. */
    private boolean isShortTitle(Page.Line line) {
        String text = line.text().strip();
        return text.length() < SHORTEST_WRAPPED
                && Character.isLetter(text.charAt(text.length() - 1))
                && lexicon.read(line.tokens()).stream().noneMatch(word -> Concept.FOR_HANDS.contains(word.concept()));
    }

    private void take(Page.Line line) {
        List<Token> tokens = numbered(line.tokens());
        boolean inRound =
                open && !chunks.isEmpty() && chunks.get(chunks.size() - 1).rounds();
        Optional<Part> label = parts.labelled(line.text()).filter(known -> !inRound && !saysItself(tokens));
        if (TIME.matcher(line.text()).find()) {
            add(false, Part.OTHER, tokens.subList(3, tokens.size()));
            open = false;
            return;
        }
        boolean told = inRound
                && isTitleAlone(chunks.get(chunks.size() - 1))
                && lexicon.read(tokens).stream().limit(1).anyMatch(word -> word.is(Concept.REPEAT));
        if (beginsRound(tokens) && !told) {
            inRounds = true;
            part = Part.ROUNDS;
            add(true, part, tokens);
        } else if (label.isPresent()) {
            add(false, label.get(), afterColon(tokens));
        } else if (!chunks.isEmpty() && goesOn(tokens, line)) {
            chunks.get(chunks.size() - 1).lines().add(tokens);
            open = true;
        } else {
            add(false, part, tokens);
        }
    }

    /** Whether a sentence that began on the line before goes on here. */
    private boolean isWrapped(Page.Line before, Page.Line line) {
        String text = before.text().strip();
        if (smallLetters) {
            return text.endsWith(",");
        }
        boolean label = LABEL.matcher(line.text()).find();
        int shortest =
                Character.isLowerCase(line.text().strip().charAt(0)) ? SHORTEST_WRAPPED : SHORTEST_BEFORE_CAPITAL;
        return !label
                && !text.endsWith(".")
                && !text.endsWith(":")
                && (text.length() >= shortest || text.endsWith(","));
    }

    /** Whether nothing stands behind the title of a round yet. */
    private boolean isTitleAlone(Chunk chunk) {
        return chunk.lines().size() == 1
                && lexicon.read(chunk.tokens()).size() <= 4
                && !RoundTitle.hasColon(lexicon.read(chunk.tokens()));
    }

    private void add(boolean rounds, Part of, List<Token> tokens) {
        if (!tokens.isEmpty()) {
            chunks.add(new Chunk(of, rounds, new ArrayList<>(List.of(tokens))));
            open = true;
        }
    }

    /** A label that is part of what is said: 'Corner: 2 ch', 'Base round: 45 sts'. */
    private boolean saysItself(List<Token> tokens) {
        List<Lexeme> words = lexicon.read(tokens);
        return !words.isEmpty()
                && EnumSet.of(Concept.CORNER, Concept.BASE_ROUND, Concept.STITCH_COUNT)
                        .contains(words.get(0).concept());
    }

    private static List<Token> afterColon(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).text().equals(":")) {
                return tokens.subList(i + 1, tokens.size());
            }
        }
        return tokens;
    }

    /** Whether a line goes on with what stands before it. */
    private boolean goesOn(List<Token> tokens, Page.Line line) {
        Chunk last = chunks.get(chunks.size() - 1);
        if (!last.rounds()) {
            return open
                    && !line.listed()
                    && last.part() != Part.ABBREVIATIONS
                    && isWrapped(page.lines().get(line.number() - 2), line);
        }
        if (part != Part.ROUNDS) {
            return false;
        }
        List<Lexeme> words = lexicon.read(tokens);
        return open
                || (!words.isEmpty()
                        && GOES_ON.contains(words.get(0).concept())
                        && !words.get(0).is(Concept.BASE_ROUND));
    }

    /** Takes the number of a line off; among the rounds, one without a title of its own is the round of that number. */
    private List<Token> numbered(List<Token> tokens) {
        boolean number = tokens.size() > 2
                && tokens.get(0).kind() == Token.Kind.NUMBER
                && (tokens.get(1).text().equals(".") || tokens.get(1).text().equals(")"))
                && tokens.get(0).end() == tokens.get(1).column()
                && tokens.get(1).end() < tokens.get(2).column();
        if (!number) {
            return tokens;
        }
        List<Token> rest = tokens.subList(2, tokens.size());
        List<Lexeme> words = lexicon.read(rest);
        boolean yarn = !words.isEmpty()
                && (words.get(0).is(Concept.YARN_NAME)
                        || (words.size() > 1
                                && words.get(0).is(Concept.OPEN)
                                && words.get(1).is(Concept.YARN_NAME)));
        boolean signed = words.size() > 1
                && (words.get(1).is(Concept.COLON)
                        || words.get(1).is(Concept.DASH)
                        || words.get(0).is(Concept.OPEN));
        if (beginsRound(rest) || (part != Part.ROUNDS && !(yarn && signed))) {
            return rest;
        }
        Token first = tokens.get(0);
        List<Token> titled = new ArrayList<>(List.of(
                new Token(Token.Kind.WORD, roundWord, roundWord, first.line(), first.column()),
                first,
                new Token(Token.Kind.SIGN, ":", ":", first.line(), tokens.get(1).column())));
        boolean yarnFirst = rest.get(0).text().equals("(")
                || (rest.size() > 1 && rest.get(1).text().equals(":"));
        if (yarnFirst) {
            titled.remove(2);
        }
        titled.addAll(rest);
        return titled;
    }
}
