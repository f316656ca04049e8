package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * How long one kind of work took in this shop.
 *
 * @param count how often it was timed
 * @param lower minutes that a quarter of them did not exceed
 * @param median minutes that half of them did not exceed
 * @param upper minutes that three quarters of them did not exceed
 */
public record Spread(int count, BigDecimal lower, BigDecimal median, BigDecimal upper) {

    private static final int QUARTERS = 4;
    private static final int DECIMALS = 2;

    /**
     * The spread of some timings. Between two timings a quartile lies in proportion (the seventh definition of Hyndman and Fan,
     * Sample quantiles in statistical packages, 1996; from memory).
     *
     * @param minutes in any order, at least one
     */
    public static Spread of(List<BigDecimal> minutes) {
        List<BigDecimal> sorted = minutes.stream().sorted().toList();
        return new Spread(sorted.size(), quartile(sorted, 1), quartile(sorted, 2), quartile(sorted, 3));
    }

    private static BigDecimal quartile(List<BigDecimal> sorted, int quarters) {
        int place = (sorted.size() - 1) * quarters;
        BigDecimal low = sorted.get(place / QUARTERS);
        BigDecimal high = sorted.get(Math.min(place / QUARTERS + 1, sorted.size() - 1));
        BigDecimal part = BigDecimal.valueOf(place % QUARTERS).divide(BigDecimal.valueOf(QUARTERS));
        return low.add(high.subtract(low).multiply(part)).setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
