#include "tests/fuzz/target.h"

#include "core/base/packed_tree.h"
#include "core/catalogue/lint.h"
#include "core/catalogue/own_files.h"
#include "core/catalogue/translation.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

namespace lidlark::fuzz {

namespace {

using catalogue::Catalogue;
using catalogue::SourceFile;

constexpr std::array items{"spoon", "towel"};
constexpr auto activity = "sail-tug";

SourceFile fileOf(const std::string &name)
{
    std::ostringstream text;
    text << std::ifstream(std::string(LIDLARK_CATALOGUE_DIR) + "/" + name).rdbuf();
    return {name, text.str()};
}

std::vector<SourceFile> packedItems()
{
    std::vector<SourceFile> files;
    for (const std::string item : items) {
        SourceFile file = fileOf("items/" + item + ".yaml");
        file.text = packTree(std::get<YamlNode>(readTree(file.text)));
        files.push_back(std::move(file));
    }
    return files;
}

/// One activity and what it needs, as they are shipped.
struct Shipped {
    std::vector<SourceFile> items = packedItems();
    SourceFile activity = fileOf("activities/" + std::string(fuzz::activity) + ".yaml");
    Catalogue english = catalogue::load(items, std::span(&activity, 1));
    Shipped()
    {
        must(english.problems().empty() && english.activities().size() == 1,
             "what is shipped is sound");
    }
};

const Shipped &shipped()
{
    static const Shipped loaded;
    return loaded;
}

/// What a therapist's phone may have sent: an item, an activity, and a word about our spoon.
Catalogue withOwn(const std::string &text)
{
    catalogue::OwnFiles own;
    for (const char *name : {"items/own-thing.yaml", "items/spoon.yaml"})
        own.items.push_back({name, text});
    own.activities.push_back({"activities/own-play.yaml", text});
    Catalogue made = catalogue::catalogueWith(shipped().english, own);
    const catalogue::ItemKind *spoon = made.item({"spoon"});
    must(spoon != nullptr && shipped().english.item({"spoon"})->tags.without(spoon->tags).empty(),
         "what is built in keeps its tags");
    return made;
}

Catalogue read(char which, std::string_view text)
{
    const std::string own(text);
    if (which == 'a') {
        const SourceFile file{shipped().activity.name, own};
        return catalogue::load(shipped().items, std::span(&file, 1));
    }
    if (which == 'i') {
        const SourceFile file{"items/spoon.yaml", own};
        return catalogue::load(std::span(&file, 1), {});
    }
    if (which == 'o')
        return withOwn(own);
    const SourceFile file{which == 't' ? "languages/pl/sail-tug.yaml" : "languages/pl/items.yaml",
                          own};
    return catalogue::translate(shipped().english, std::span(&file, 1));
}

bool isSame(const Catalogue &one, const Catalogue &other)
{
    const auto sameId = [](const auto &a, const auto &b) {
        return a.id == b.id && a.name == b.name && a.wordsOrigin == b.wordsOrigin;
    };
    return std::ranges::equal(one.items(), other.items(), sameId) &&
           std::ranges::equal(one.activities(), other.activities(), sameId) &&
           one.problems() == other.problems() && one.untranslated() == other.untranslated();
}

} // namespace

void catalogue(std::string_view bytes)
{
    if (bytes.empty())
        return;
    const char which = bytes.front();
    const std::string_view text = bytes.substr(1);
    const Catalogue loaded = read(which, text);
    for (const catalogue::Activity &sound : loaded.activities()) {
        (void)catalogue::lint(sound, loaded);
        (void)catalogue::questionsForPeople(sound);
        must(std::isfinite(catalogue::readingGradeOf(sound)), "a reading grade is a number");
    }
    const auto tree = readTree(text);
    const auto *root = std::get_if<YamlNode>(&tree);
    if (root == nullptr || which == 'o') // an own entry is never packed
        return;
    const std::string packed = packTree(*root);
    if (packed.size() <= yamlSizeLimit)
        must(isSame(read(which, packed), loaded), "a packed file says what its YAML says");
}

} // namespace lidlark::fuzz
