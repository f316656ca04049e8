package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.web.Browsers.Screen;

/** Wiring notes on a job's page, in a real browser. */
class NotesBrowserTest extends InBrowser {

    private static final String NOTES = """
            Notes from the last one of these, ask Odile
            12V constant\tred\t+\tcolumn
            ignition\tpink\t+\tcolumn
            wuzzle feed\tblack/white\t-\tleft kick panel, the brown tin box
            horn\tchampagne\t(-) ??\tclock spring
            """;

    @TempDir
    private Path folder;

    @Test
    void notesAreReadPutRightRememberedAndTakenAsTheSheet() {
        try (TestShop shop = TestShop.open(folder)) {
            String first = job(shop);
            for (Screen screen : Screen.of("notes")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = signedIn(somebody, shop);
                    page.navigate(first + "/notes");
                    Browsers.look(page, screen, "notes-empty");
                    paste(page, NOTES);
                    assertThat(page.locator("#understood")).containsText("4 circuits");
                    assertThat(entry(page, 3).locator(".written"))
                            .hasText("wuzzle feed\tblack/white\t-\tleft kick panel, the brown tin box");
                    Browsers.look(page, screen, "notes-read");
                }
            }
            try (BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
                Page page = signedIn(somebody, shop);
                page.navigate(first + "/notes");
                Locator role = field(entry(page, 3), "Circuit");
                assertThat(role).containsText("not read");
                assertThat(page.locator(".loose")).containsText("ask Odile");
                role.locator("summary").click();
                role.locator("select").selectOption("accessory");
                role.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Put right"))
                        .click();
                assertThat(field(entry(page, 3), "Circuit")).containsText("100 % sure");

                // The stripe first: one tap turns it about.
                field(entry(page, 3), "Colour")
                        .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("WH/BK"))
                        .click();
                assertThat(field(entry(page, 3), "Colour").locator("b")).hasText("WH/BK");

                // Another job of the same shop: suggested, and not taken.
                page.navigate(job(shop) + "/notes");
                page.getByLabel("Or a file")
                        .setInputFiles(new FilePayload(
                                "notes.csv",
                                "text/csv",
                                "circuit,colour,polarity\nwuzzle feed,brown,-\nhorn,black,-\n"
                                        .getBytes(StandardCharsets.UTF_8)));
                page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Read the notes"))
                        .click();
                Locator later = field(entry(page, 1), "Circuit");
                assertThat(later).containsText("not read");
                assertThat(later.locator("button.said"))
                        .containsText("accessory: your shop read it so once of 1 (67 %)");
                Browsers.look(page, Screen.PHONE, "notes-suggested");
                later.locator("button.said").click();
                assertThat(field(entry(page, 1), "Circuit").locator("b")).hasText("accessory");
            }
        }
    }

    @Test
    void theSheetHasTheProblemsOfAFileUntilItCanBeUsed() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            String job = job(shop);
            Page page = signedIn(somebody, shop);
            page.navigate(job + "/notes");
            paste(page, "12V constant\tred\t+\tcolumn\nignition\tpink\t+\tcolumn\n");
            take(page);
            assertThat(page.locator(".problem")).containsText("sheet.yaml");
            assertThat(page.locator("#text")).hasValue(Pattern.compile("constant-supply"));
            page.navigate(job + "/notes");
            facts(page);
            Browsers.look(page, Screen.LAPTOP, "notes-facts");
            take(page);
            assertThat(page.locator("h1")).containsText("Fennick");
            page.navigate(job + "/texts/sheet");
            assertThat(page.locator("#text").inputValue()).contains("format: loomproof sheet 1", "notes.txt 1:1-");
        }
    }

    @Test
    void aSecondSourceIsMergedIntoTheSheetAndWhatDiffersIsToldBefore() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            String job = job(shop);
            Page page = signedIn(somebody, shop);
            page.navigate(job + "/notes");
            paste(page, "12V constant\tred\t+\tcolumn\nignition\tpink\t+\tcolumn\n");
            facts(page);
            take(page);
            page.navigate(job + "/notes");
            // These are the notes that the sheet was made of.
            assertThat(page.locator("#merge")).hasCount(0);
            paste(page, "12V constant\tred\t+\tcolumn\nignition\tyellow\t+\tcolumn\nhorn\tgrey\t-\tcolumn\n");
            Locator merge = page.locator("#merge");
            assertThat(merge).containsText("constant-supply is borne out");
            assertThat(merge).containsText("ignition and ignition-2 cannot both be true");
            assertThat(merge).containsText("horn is new");
            Browsers.look(page, Screen.PHONE, "notes-merge");
            merge.getByRole(AriaRole.BUTTON).click();
            page.navigate(job + "/texts/sheet");
            assertThat(page.locator("#text").inputValue())
                    .contains("id: ignition-2", "colour: PK", "colour: YE", "role: horn");
        }
    }

    @Test
    void whichVehicleItIsDecidesWhichLinesStayOffTheSheet() {
        try (TestShop shop = TestShop.open(folder)) {
            String job = job(shop);
            for (Screen screen : Screen.of("notes-which")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = signedIn(somebody, shop);
                    page.navigate(job + "/notes");
                    paste(page, """
                            Circuit,Colour,Polarity,Place,Remarks
                            Ignition,yellow,+,ignition switch,only with automatic gearbox
                            Ignition,white,+,ignition switch,only with manual gearbox
                            Horn,grey,-,steering column,LX/EX only
                            Lock,green,-,kick panel,only with power locks
                            """);
                    Locator which = page.locator("#which");
                    which.getByLabel("Gearbox").selectOption("manual");
                    which.getByLabel("Trim").selectOption("something else");
                    Browsers.look(page, screen, "notes-which");
                    which.getByRole(AriaRole.BUTTON).click();
                    assertThat(which.getByLabel("Gearbox")).hasValue("manual");
                    assertThat(entry(page, 1)).containsText("this one has not got");
                    assertThat(entry(page, 2)).not().containsText("this one has not got");
                    assertThat(entry(page, 3)).containsText("this one has not got");
                    assertThat(entry(page, 4)).not().containsText("this one has not got");
                    which.getByLabel("Trim").selectOption("EX");
                    which.getByRole(AriaRole.BUTTON).click();
                    assertThat(entry(page, 3)).not().containsText("this one has not got");
                }
            }
            try (BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
                Page page = signedIn(somebody, shop);
                page.navigate(job + "/notes");
                facts(page);
                take(page);
                page.navigate(job + "/texts/sheet");
                // What is told of the gearbox is the sheet's; a trim is no key of it.
                assertThat(page.locator("#text").inputValue())
                        .contains("gearbox: manual", "colour: WH")
                        .doesNotContain("colour: YE", "trim:");
            }
        }
    }

    @Test
    void longNotesFoldWhatIsSure() {
        try (TestShop shop = TestShop.open(folder)) {
            String job = job(shop);
            for (Screen screen : Screen.of("notes-long")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = signedIn(somebody, shop);
                    page.navigate(job + "/notes");
                    paste(page, """
                            Circuit | Colour | Polarity | Location
                            Battery | red/white | + | ignition switch
                            Ignition | pink | + | ignition switch
                            Second ignition | white | + | ignition switch
                            Accessory | orange | + | ignition switch
                            Starter | yellow | + | ignition switch
                            Parking lamp | brown | + | left kick panel
                            Brake | green/white | + | brake pedal
                            Wuzzle | violet | - | left kick panel
                            Horn | grey | (-) ?? | steering column
                            """);
                    assertThat(entry(page, 1).locator(".folded")).hasCount(1);
                    assertThat(entry(page, 1).locator(".folded > summary")).containsText("RD/WH");
                    assertThat(field(entry(page, 1), "Colour")).isHidden();
                    assertThat(field(entry(page, 8), "Circuit")).isVisible();
                    assertThat(field(entry(page, 9), "Switching")).isVisible();
                    Browsers.look(page, screen, "notes-long");
                    entry(page, 1).locator(".folded > summary").click();
                    assertThat(field(entry(page, 1), "Colour")).isVisible();
                }
            }
        }
    }

    @Test
    void whatCannotBeReadIsSaidAndTheFrontDeskIsNotLetIn() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            String job = job(shop);
            Page page = signedIn(somebody, shop);
            page.navigate(job + "/notes");
            page.getByLabel("Or a file")
                    .setInputFiles(new FilePayload("x.bin", "application/octet-stream", new byte[] {0, 1, 2, 3, 0, 0}));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Read the notes"))
                    .click();
            assertThat(page.locator(".problem")).containsText("x.bin");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign out"))
                    .click();
            signIn(page, "cy", "a kettle for Cy!");
            page.navigate(job + "/notes");
            assertThat(page.locator("#text")).hasCount(0);
        }
    }

    @Test
    void aPdfAndAPictureOfPaperAreReadAsPastedNotesAre() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            Page page = signedIn(somebody, shop);
            page.navigate(job(shop) + "/notes");
            give(page, new FilePayload("notes.pdf", "application/pdf", pdf()));
            assertThat(page.locator("#understood")).containsText("2 circuits");
            assertThat(field(entry(page, 1), "Circuit").locator("b")).hasText("horn");
            assertThat(field(entry(page, 2), "Colour").locator("b")).hasText("VT");
            assertThat(page.getByLabel("Kind of key", new Page.GetByLabelOptions().setExact(true)))
                    .hasValue("transponder");

            page.navigate(job(shop) + "/notes");
            give(page, new FilePayload("paper.png", "image/png", picture()));
            if (hasTesseract()) {
                assertThat(page.locator("#understood")).containsText("2 circuits");
                assertThat(field(entry(page, 1), "Circuit").locator("b")).hasText("horn");
                assertThat(field(entry(page, 2), "Colour").locator("b")).hasText("VT");
                Browsers.look(page, Screen.LAPTOP, "notes-picture");
            } else {
                assertThat(page.locator(".problem")).containsText("tesseract");
            }
        }
    }

    private static final List<String> ROWS = List.of(
            "Saloon, key with chip", "Horn:   black/yellow (-)   left kick panel", "Brake:   violet (+)   brake pedal");

    private static byte[] pdf() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            PDPage sheet = new PDPage();
            pdf.addPage(sheet);
            try (PDPageContentStream content = new PDPageContentStream(pdf, sheet)) {
                content.setFont(new PDType1Font(Standard14Fonts.FontName.COURIER), 12);
                content.setLeading(16);
                content.beginText();
                content.newLineAtOffset(60, 700);
                for (String row : ROWS) {
                    content.showText(row);
                    content.newLine();
                }
                content.endText();
            }
            pdf.save(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] picture() throws IOException {
        BufferedImage paper = new BufferedImage(1400, 420, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D ink = paper.createGraphics();
        ink.setColor(Color.WHITE);
        ink.fillRect(0, 0, paper.getWidth(), paper.getHeight());
        ink.setColor(Color.BLACK);
        ink.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 40));
        for (int i = 0; i < ROWS.size(); i++) {
            ink.drawString(ROWS.get(i), 60, 110 + i * 100);
        }
        ink.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(paper, "png", bytes);
        return bytes.toByteArray();
    }

    private static boolean hasTesseract() {
        try {
            Process asked = new ProcessBuilder("tesseract", "--version")
                    .redirectErrorStream(true)
                    .start();
            asked.getInputStream().readAllBytes();
            return asked.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void give(Page page, FilePayload file) {
        page.getByLabel("Or a file").setInputFiles(file);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Read the notes"))
                .click();
    }

    private static void facts(Page page) {
        page.getByLabel("System voltage, such as 12 V").fill("12 V");
        Map.of(
                        "Pole at the body",
                        "negative",
                        "Drive",
                        "combustion",
                        "Start",
                        "key",
                        "Kind of key",
                        "plain",
                        "Wheel",
                        "left")
                .forEach((label, value) -> page.getByLabel(label, new Page.GetByLabelOptions().setExact(true))
                        .selectOption(value));
    }

    private static Locator entry(Page page, int number) {
        return page.locator(".readings > li").nth(number - 1);
    }

    private static Locator field(Locator entry, String name) {
        return entry.getByRole(AriaRole.GROUP, new Locator.GetByRoleOptions().setName(name));
    }

    private static void paste(Page page, String text) {
        if (page.locator("#text").isHidden()) {
            page.getByText("Read other notes").click();
        }
        page.getByLabel("Paste the notes").fill(text);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Read the notes"))
                .click();
    }

    private static void take(Page page) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take as this job's sheet"))
                .click();
    }

    private static String job(TestShop shop) {
        CardId id = shop.shop
                .book()
                .orElseThrow()
                .cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Odile Brandt"),
                        Map.of("make", "Fennick", "model", "Drayling", "plate", "QX 481 LM"))
                .id();
        return shop.address() + "/jobs/" + id;
    }
}
