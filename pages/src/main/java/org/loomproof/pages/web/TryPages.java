package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.pages.bay.Controls;
import org.loomproof.pages.bay.TriedCar;
import org.loomproof.pages.bay.TriedCars;
import org.loomproof.pages.bay.TriedMoment;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.svg.SvgDrawing;

/** A job's car tried out: the whole stand of its controls is in the address, so that it can be kept and sent on. */
final class TryPages {

    private final TriedCars cars = new TriedCars();

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Optional<TriedCar> car = cars.of(job, visit.book());
            if (car.isPresent()) {
                show(visit, job, car.orElseThrow());
            } else {
                visit.refuse(HttpStatus.CONFLICT);
            }
        });
    }

    private static void show(Visit visit, Card job, TriedCar car) {
        Controls controls = Controls.in(car.brief().sheet(), visit::query);
        visit.show("bay/try", shown(job, car, controls, new Wording(visit.messages())));
    }

    /** What the template is given. */
    static Map<String, Object> shown(Card job, TriedCar car, Controls controls, Wording words) {
        TriedMoment moment = car.at(controls);
        String title = words.of("pages.bay.try.drawing");
        List<String> sheets = car.drawn(moment, words).stream()
                .map(sheet -> svg(sheet, title))
                .toList();
        return Map.of("job", job, "car", car, "controls", controls, "moment", moment, "sheets", sheets);
    }

    private static String svg(PlacedDrawing sheet, String title) {
        return MarkupWriter.fragment(SvgDrawing.of(sheet, title));
    }
}
