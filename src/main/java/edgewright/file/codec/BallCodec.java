package edgewright.file.codec;

import edgewright.chart.Ball;
import edgewright.chart.Extras;

/** What the band of a ball says. */
final class BallCodec extends RecordCodec<Ball> {
    private final Member<Ball, Double> metres = required("metres", ValueCodecs.MEASURE, Ball::metres);
    private final Member<Ball, Double> grams = required("grams", ValueCodecs.MEASURE, Ball::grams);

    @Override
    Ball make(FoundMembers found) {
        return new Ball(found.get(metres), found.get(grams), found.extras());
    }

    @Override
    Extras extras(Ball ball) {
        return ball.extras();
    }
}
