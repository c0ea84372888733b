#include "core/usecase/island_shelf.h"

#include "core/store/clinic_repository.h"
#include "core/store/recording.h"
#include "core/usecase/island.h"
#include "core/workbench/fitted_box.h"

#include <array>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using workbench::Hand;
using workbench::KeptBox;

struct ShelfRow {
    const char *item;
    const char *name;
    const char *shop;
    int pack;
    int pence;
    int inStock;
    bool usedUp;
};

std::vector<workbench::KeptSupply> supplies()
{
    static constexpr std::array rows{
        // clang-format off
        ShelfRow{"card", "lacing card", "Harbour Stores", 6, 420, 2, false},
        ShelfRow{"lace", "lace, 90 cm", "Kilbrae Crafts", 10, 250, 0, false},
        ShelfRow{"pieces", "small construction pieces", "School Supply", 250, 780, 0, false},
        ShelfRow{"bands", "rubber bands", "Harbour Stores", 100, 160, 0, true},
        ShelfRow{"loops", "silicone loops (latex-free)", "Kilbrae Crafts", 50, 290, 0, true},
        ShelfRow{"pegs", "clothes pegs", "School Supply", 24, 150, 10, false},
        ShelfRow{"scissors", "child scissors, right", "Harbour Stores", 12, 960, 0, false},
        ShelfRow{"scissors-left", "child scissors, left", "Kilbrae Crafts", 4, 440, 0, false},
        ShelfRow{"crayons", "short crayons", "School Supply", 64, 512, 0, true},
        ShelfRow{"chunky", "chunky crayons", "Harbour Stores", 12, 300, 0, true},
        ShelfRow{"dough", "dough pot, wheat", "Kilbrae Crafts", 12, 600, 3, true},
        ShelfRow{"ricedough", "dough pot, wheat-free", "School Supply", 4, 640, 0, true},
        ShelfRow{"eyes", "stick-on eyes", "Harbour Stores", 100, 180, 0, true},
        ShelfRow{"ball", "slit ball", "Kilbrae Crafts", 3, 210, 0, false},
        ShelfRow{"pouch", "slit felt pouch (latex-free)", "School Supply", 1, 190, 0, false},
        ShelfRow{"pompoms", "pom-poms 25 mm", "Harbour Stores", 80, 200, 0, true},
        ShelfRow{"balloon", "balloons", "Kilbrae Crafts", 25, 190, 0, true},
        ShelfRow{"scarf", "light scarf", "School Supply", 5, 450, 0, false},
        ShelfRow{"dropper", "dropper, one-piece", "Harbour Stores", 20, 240, 0, false},
        ShelfRow{"straw", "straws, soft", "Kilbrae Crafts", 50, 125, 0, true},
        ShelfRow{"rband", "resistance band, latex-free, m", "School Supply", 25, 1800, 0, false},
        ShelfRow{"lids", "large lids 60 mm", "Harbour Stores", 20, 300, 0, false},
        ShelfRow{"box", "box with lid", "Kilbrae Crafts", 10, 1450, 1, false},
        ShelfRow{"onepegs", "one-piece pegs", "School Supply", 12, 260, 0, false},
        ShelfRow{"largeblocks", "large blocks", "Kilbrae Crafts", 20, 540, 0, false},
        ShelfRow{"fabricballs", "large fabric balls", "Harbour Stores", 8, 360, 0, false},
        // clang-format on
    };
    std::vector<workbench::KeptSupply> kept;
    for (const ShelfRow &row : rows)
        kept.push_back({{{row.item},
                         row.name,
                         {{row.shop, row.pack, row.pence, "GBP"}},
                         row.inStock,
                         row.usedUp},
                        {},
                        {},
                        {}});
    // Looked at: a box of plain plastic.
    for (workbench::KeptSupply &supply : kept) {
        if (supply.supply.item == ItemId{"box"})
            supply.freeOf = {child::Avoided::Latex, child::Avoided::Wheat};
    }
    return kept;
}

workbench::Design standardDesign(const std::string &id)
{
    return {{id},
            "Standard box",
            {{{"card"}, 1, {}},
             {{"lace"}, 1, {}},
             {{"pieces"}, 12, {}},
             {{"bands"}, 6, {}},
             {{"pegs"}, 6, {}},
             {{"scissors"}, 1, {}},
             {{"crayons"}, 4, {}},
             {{"dough"}, 1, {}},
             {{"eyes"}, 6, {}},
             {{"ball"}, 1, {}},
             {{"pompoms"}, 8, {}},
             {{"balloon"}, 3, {}},
             {{"dropper"}, 1, {}},
             {{"straw"}, 2, {}},
             {{"rband"}, 1, {}},
             {{"box"}, 1, {}}}};
}

/// Whose box, for which hand, and what their home asks.
struct SpringBox {
    const char *code;
    const char *whose;
    Hand hand = Hand::Unsaid;
    workbench::HomeAsks home = {};
};

std::vector<KeptBox> springBoxes(const workbench::Design &design,
                                 const workbench::KeptSupplies &shelf,
                                 const catalogue::Catalogue &catalogue)
{
    const std::vector<SpringBox> wanted{{"K1", "Rory"},
                                        {"K2", "Fin", Hand::Left},
                                        {"K3", "Anya", Hand::Unsaid, {{child::Avoided::Latex}}},
                                        {"K4", "Lewis", Hand::Unsaid, {{}, true}},
                                        {"K5", "Oona"},
                                        {"K6", ""}};
    std::vector<KeptBox> boxes;
    for (const SpringBox &one : wanted) {
        KeptBox box = workbench::fittedBox({{one.code, one.whose, design.id, {}}, {}, false},
                                           design, one.home, catalogue);
        workbench::fitHand(box, one.hand, shelf, catalogue);
        boxes.push_back(std::move(box));
    }
    return boxes;
}

} // namespace

Outcome layOutShelf(Workplace &therapist)
{
    auto recording = store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    Outcome said = Done{};
    const auto say = [&](Kind kind, const std::string &fields) {
        if (said)
            said = recording->say(store::clinicLane, kind, fields);
    };
    workbench::KeptSupplies shelf;
    for (const workbench::KeptSupply &supply : supplies()) {
        shelf[supply.supply.item] = supply;
        say(Kind::Supply, workbench::fieldsOf(supply));
    }
    const workbench::Design design = standardDesign(therapist.entropy.freshId());
    say(Kind::Design, workbench::fieldsOf(design));
    workbench::KeptBuild build;
    build.id = {therapist.entropy.freshId()};
    build.name = "Spring boxes";
    build.day = island::dayOne() + 14;
    say(Kind::Build, workbench::fieldsOfHead(build));
    for (const KeptBox &box : springBoxes(design, shelf, therapist.catalogue))
        say(Kind::Build, workbench::fieldsOfBox(build.id, box));
    return said ? recording->commit() : said;
}

} // namespace lidlark::usecase
