#pragma once

#include "core/catalogue/catalogue.h"

#include <QString>

#include <algorithm>

/// One sound activity and the items it needs, invented for the tests of the loader.
namespace samples {

using namespace lidlark;
using namespace lidlark::catalogue;

/// A sphere that is a small part where the tags say so, and one that is none.
inline std::string sizeFor(const std::string &tags)
{
    return tags.find("SMALL") != std::string::npos ? "20" : "80";
}

inline std::string item(const std::string &id, const std::string &source, const std::string &tags,
                        const std::string &more = {})
{
    std::string text = "id: ";
    text += id + "\nversion: 1\nname: " + id + "\none: " + id + "\nsource: " + source;
    text += source == "box" ? "\nlid_count: 6" : "\nlid_count: 0";
    text += "\ncomes_back: \"yes\"\ntags: [" + tags + "]\nallergens: [";
    text += tags.find("LATEX") != std::string::npos ? "latex" : "";
    text += "]\nmeasures: {whole: {shape: sphere, mm: [" + sizeFor(tags) + "]}}\nholds: []";
    text += "\ncare: [\"Wipe.\"]\ndrawing: item-" + id + "\nalt: \"A thing.\"\ncleanable: true\n";
    text += source == "box" ? "use: {pieces: 1, days: 30}\n" : "";
    return text + more;
}

inline SourceFile itemFile(const std::string &id, const std::string &text)
{
    return {"items/" + id + ".yaml", text};
}

inline std::vector<SourceFile> soundItems()
{
    return {itemFile("beads", item("beads", "box", "SMALL", "swap: {with: blocks, note: Large}\n")),
            itemFile("blocks", item("blocks", "box", "")),
            itemFile("bladder", item("bladder", "box", "LATEX")),
            itemFile("tongs", item("tongs", "home", "")),
            itemFile("towel", item("towel", "home", "FACE"))};
}

inline const std::string soundActivity = R"(id: pebble-post
entry: A99
version: 1
status: awaiting-review
name: Pebble Post
invite: "Will the pebble fit?"
adult_line: "Sit beside the child with the beads in one pot."
picture: {drawing: scene-pebble-post, alt: "A hand over a pot."}
steps:
  - text: "Put the pot 20 cm from the child."
  - {text: "Post six beads.", drawing: scene-pebble-post-2, alt: "A bead falls."}
minutes: {out: 1, play: 5, back: 1}
items:
  - {item: beads, qty: 6, source: box, role: must, fate: comes-back, count_back: 6}
  - {item: towel, qty: 1, source: home, role: nice, fate: comes-back}
skills_main: [PIN]
skills_also: [FOR, STR]
life_areas: [opening things]
age_floor_months: 36
floor_reason: "Small parts."
effect: settling
senses: [tactile]
mess: 0
space: table
sound: quiet
supervision: beside
hands: 1
energy: low
position: [chair, wheelchair]
words_needed: few
easier: [{lever: size, text: "Larger pot"}]
harder: [{lever: size, text: "Smaller pot"}]
ways_in: {one_hand: "The pot stands on the towel."}
cautions: [SMALL]
watch_for: ["A bead on the floor."]
stop_when: ["If anything goes to the mouth."]
say: ["I heard that one land."]
put_back: ["Six beads: count together", "Lid on"]
no_box: false
video_ok: true
view: hands
claim: customary
swaps:
  - {item: beads, with: blocks, cautions: [], text: "Blocks instead."}
)";

inline const std::vector<SourceFile> &items()
{
    static const std::vector<SourceFile> files = soundItems();
    return files;
}

inline SourceFile activityFile(const std::string &text)
{
    return {"activities/pebble-post.yaml", text};
}

inline Catalogue loadActivity(const std::string &text)
{
    const std::vector<SourceFile> files{activityFile(text)};
    return load(items(), files);
}

inline std::string replaced(std::string text, const std::string &what, const std::string &with)
{
    const std::size_t at = text.find(what);
    return at == std::string::npos ? std::string() : text.replace(at, what.size(), with);
}

inline int lineAt(const std::string &text, std::size_t position)
{
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + position, '\n'));
}

inline QString shown(const std::vector<Problem> &problems)
{
    QString lines;
    for (const Problem &problem : problems)
        lines += QString::fromStdString(problem.text()) + "\n";
    return lines;
}

inline QString words(int count)
{
    return QString("word ").repeated(count).trimmed();
}

} // namespace samples
