package edgewright.words.setup;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.CornerSentence;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.TalkReader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads sentences that hold for all rounds. A sentence that says something to hands and is none of these is refused; only one
 * that says nothing to hands is prose.
 */
public final class SetUpReader {
    /** What parts a sentence into clauses, one kind after the other. */
    private static final List<Set<Concept>> SPLITS = List.of(
            EnumSet.of(Concept.SEMICOLON, Concept.STOP),
            EnumSet.of(Concept.DASH, Concept.OPEN, Concept.CLOSE),
            EnumSet.of(Concept.COMMA),
            EnumSet.of(Concept.AND, Concept.COLON),
            EnumSet.noneOf(Concept.class));

    /** Parts in which nothing of the border is told. */
    private static final Set<Part> NO_ORDERS =
            EnumSet.of(Part.TENSION, Part.MATERIALS, Part.PRACTICE, Part.ABBREVIATIONS);

    private final Facts facts;
    private final TalkReader talk;
    private final MultipleFacts multiples;
    private final RoundFacts rounds;
    private final CornerFacts corners;
    private final BaseFacts bases;
    private final StitchFacts stitches;
    private final YarnFacts yarns;
    private final HandCare care;
    private final DepthFacts depths;

    public SetUpReader(Facts facts, Language language) {
        SetUpWords words = SetUpWords.of(language);
        this.facts = facts;
        this.talk = words.talk();
        this.multiples = new MultipleFacts(facts, words);
        this.rounds = new RoundFacts(facts, words);
        this.corners = new CornerFacts(facts, words);
        this.bases = new BaseFacts(facts, words);
        this.yarns = new YarnFacts(facts, words);
        this.stitches = new StitchFacts(facts, words);
        this.care = new HandCare(language, talk);
        this.depths = new DepthFacts(facts, words, language);
    }

    /**
     * Takes a sentence.
     *
     * @return what it was taken as: set-up or prose
     */
    public LineKind take(List<Lexeme> sentence, Part part) {
        if (sentence.isEmpty()) {
            return LineKind.BLANK;
        }
        if (care.is(sentence) || care.isWish(sentence, part)) {
            return LineKind.PROSE;
        }
        // How much a side has grown can only be said between rounds, where it is known up to which.
        Optional<TalkReader.Talk> said =
                talk.of(sentence).filter(each -> each.growth().isEmpty());
        if (said.isPresent()) {
            facts.mentioned.addAll(said.get().rounds());
            return LineKind.PROSE;
        }
        if (yarns.take(sentence) || depths.take(sentence) || bases.takeBrackets(sentence)) {
            return LineKind.SET_UP;
        }
        List<List<Lexeme>> other = withoutChains(sentence);
        if (other.size() != 1 || other.get(0) != sentence) {
            other.forEach(each -> take(each, part));
            return LineKind.SET_UP;
        }
        return takeClauses(sentence, part);
    }

    /** Takes a sentence clause by clause; what is left of it must be prose. */
    private LineKind takeClauses(List<Lexeme> sentence, Part part) {
        Optional<List<List<Lexeme>>> around = cornerRest(sentence);
        boolean any = around.isPresent();
        List<List<Lexeme>> silent = new ArrayList<>();
        List<List<Lexeme>> open = new ArrayList<>(around.orElse(List.of(sentence)));
        for (Set<Concept> signs : SPLITS) {
            List<List<Lexeme>> rest = new ArrayList<>();
            for (List<Lexeme> clause : open) {
                if (takeWhole(clause, part)) {
                    any = true;
                } else if (ForHands.in(clause, part).isPresent()) {
                    rest.addAll(Clause.split(clause, signs));
                } else {
                    silent.add(clause);
                }
            }
            open = rest;
        }
        if (!open.isEmpty()) {
            throw Cursor.stop(ForHands.in(open.get(0), part).orElse(open.get(0).get(0)), "statement", "");
        }
        (any ? silent : List.of(sentence)).forEach(each -> requireNoOrder(each, part));
        return any ? LineKind.SET_UP : LineKind.PROSE;
    }

    /** What changes the work without a count cannot be followed, and is no prose either. */
    private void requireNoOrder(List<Lexeme> sentence, Part part) {
        if (NO_ORDERS.contains(part)) {
            return;
        }
        talk.order(sentence).ifPresent(order -> {
            throw Cursor.stop(order, "statement", "");
        });
    }

    /** What stands round the words for a corner, if there are any in this sentence. */
    private Optional<List<List<Lexeme>>> cornerRest(List<Lexeme> sentence) {
        Optional<CornerSentence> corner = CornerSentence.find(sentence, facts.usual);
        if (corner.isEmpty()) {
            CornerSentence.requireArms(sentence);
            return Optional.empty();
        }
        corners.tell(corner.get());
        List<List<Lexeme>> rest = new ArrayList<>();
        for (List<Lexeme> part : corner.get().rest()) {
            rest.addAll(cornerRest(part).orElse(List.of(part)));
        }
        return Optional.of(rest);
    }

    /** What a sentence says beside a chain that counts as a stitch, which would else be one of a corner. */
    private List<List<Lexeme>> withoutChains(List<Lexeme> sentence) {
        List<List<Lexeme>> clauses = Clause.split(sentence, EnumSet.of(Concept.SEMICOLON));
        List<List<Lexeme>> other = clauses.stream()
                .filter(clause -> !stitches.isChainAsStitch(clause))
                .toList();
        return other.size() == clauses.size() ? List.of(sentence) : other;
    }

    private boolean takeWhole(List<Lexeme> clause, Part part) {
        if (talk.isPut(clause)) {
            return false;
        }
        return corners.takeArmsNotChains(clause)
                || takeMultiple(clause, part)
                || rounds.takeGrowth(clause)
                || rounds.takeUsual(clause)
                || rounds.takeYarnsInTurn(clause)
                || rounds.takeAlike(clause)
                || corners.takeGroup(clause)
                || corners.takeChains(clause)
                || corners.takeCounting(clause)
                || corners.takeSpare(clause)
                || bases.take(clause, part)
                || bases.takeShown(clause, part)
                || stitches.take(clause)
                || corners.takeArms(clause);
    }

    private boolean takeMultiple(List<Lexeme> clause, Part part) {
        Optional<List<List<Lexeme>>> rest = multiples.take(clause);
        rest.ifPresent(clauses -> clauses.forEach(each -> take(each, part)));
        return rest.isPresent();
    }
}
