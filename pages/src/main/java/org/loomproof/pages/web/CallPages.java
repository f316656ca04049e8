package org.loomproof.pages.web;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.book.card.Card;
import org.loomproof.pages.call.Call;
import org.loomproof.pages.call.FirstAnswer;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Prices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.goods.price.PriceList;

/** The first call, before there is a job. */
final class CallPages {

    private static final int USUAL_DOORS = 4;
    private static final List<String> CUSTOMER = List.of("name", "phone", "email");
    private static final List<String> VEHICLE = List.of("make", "model", "year", "plate", "due");
    private static final List<String> ASKED =
            List.of("doors", "gearbox", "start", "locks", "earlier-alarm", "battery-years", "unused-days");

    /** What can be asked for on the telephone: all but what every kit does by itself. */
    static final List<Wish> WISHES =
            Arrays.stream(Wish.values()).filter(wish -> wish != Wish.BASICS).toList();

    void ask(Context context) {
        show(Visit.of(context), Map.of("doors", "" + USUAL_DOORS, "locks", "yes"), Set.of(), Optional.empty(), "");
    }

    /** Answers, or takes the job on. */
    void answer(Context context) {
        Visit visit = Visit.of(context);
        Map<String, String> fields = new HashMap<>(visit.form(CUSTOMER));
        fields.putAll(visit.form(VEHICLE));
        fields.putAll(visit.form(ASKED));
        Set<Wish> wishes = wishes(visit);
        FirstAnswer answer = FirstAnswer.to(call(visit, wishes));
        if (!visit.form("act").equals("take")) {
            show(visit, fields, wishes, Optional.of(answer), "");
        } else if (visit.form("name").isEmpty()) {
            show(visit, fields, wishes, Optional.of(answer), "pages.call.name-missing");
        } else {
            visit.go("/jobs/" + take(visit, fields, wishes, answer).id());
        }
    }

    private static Card take(Visit visit, Map<String, String> fields, Set<Wish> wishes, FirstAnswer answer) {
        Map<String, String> customer = new HashMap<>(fields);
        customer.keySet().retainAll(CUSTOMER);
        Map<String, String> job = new HashMap<>(fields);
        job.keySet().removeAll(CUSTOMER);
        job.put(
                "wishes",
                String.join(" ", wishes.stream().sorted().map(Wish::word).toList()));
        job.put("answer", answer.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        job.put("hours-low", "" + answer.hoursLow());
        job.put("hours-high", "" + answer.hoursHigh());
        job.put("stage", JobStep.CHECK_IN.word());
        return visit.book().cards().addCustomerWithJob(visit.author(), "job.called", customer, job);
    }

    private static Call call(Visit visit, Set<Wish> wishes) {
        return new Call(
                visit.number("year", 0),
                visit.number("doors", USUAL_DOORS),
                visit.form("gearbox").equals("manual"),
                visit.form("start").equals("button"),
                visit.form("locks").equals("yes"),
                visit.form("earlier-alarm").equals("yes"),
                visit.number("battery-years", 0),
                visit.number("unused-days", 0),
                wishes);
    }

    private static Set<Wish> wishes(Visit visit) {
        Set<Wish> wishes = EnumSet.noneOf(Wish.class);
        List<String> said = visit.context().formParams("wish");
        WISHES.stream().filter(wish -> said.contains(wish.word())).forEach(wishes::add);
        return wishes;
    }

    private static void show(
            Visit visit, Map<String, String> fields, Set<Wish> wishes, Optional<FirstAnswer> answer, String problem) {
        String band = answer.flatMap(a -> Prices.list(visit.book()).map(list -> band(visit, a, list)))
                .orElse("");
        visit.show(
                "call",
                Map.of(
                        "fields", fields,
                        "wishes", wishes,
                        "all", WISHES,
                        "answer", answer,
                        "band", band,
                        "problem", problem));
    }

    /** Work only: what parts cost is known when there is a plan. */
    private static String band(Visit visit, FirstAnswer answer, PriceList list) {
        return visit.messages()
                .text(
                        "pages.call.band",
                        price(list, answer.hoursLow()),
                        price(list, answer.hoursHigh()),
                        list.currency().getCode());
    }

    private static long price(PriceList list, double hours) {
        return list.hour()
                .multiply(BigDecimal.valueOf(hours))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
