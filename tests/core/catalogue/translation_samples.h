#pragma once

#include "catalogue_samples.h"

#include "core/catalogue/translation.h"

/// A sound translation of the sample activity and of one of its items.
namespace samples {

inline const std::string soundTranslation = R"(id: pebble-post
of_version: 1
status: machine-made
name: "Poczta kamyków"
invite: "Czy kamyk wejdzie?"
adult_line: "Usiądź obok dziecka, koraliki w jednym garnku."
alt: "Ręka nad garnkiem."
steps:
  - {text: "Postaw garnek 20 cm od dziecka."}
  - {text: "Wrzuć sześć koralików.", alt: "Koralik spada."}
floor_reason: "Małe części."
easier: ["Większy garnek"]
harder: ["Mniejszy garnek"]
ways_in: {one_hand: "Garnek stoi na ręczniku."}
watch_for: ["Koralik na podłodze."]
stop_when: ["Jeśli coś trafia do ust."]
say: ["Słyszę, że wpadł."]
put_back: ["Sześć koralików: liczymy razem", "Pokrywka"]
swaps: ["Zamiast nich klocki."]
)";

inline const std::string soundItemWords = R"(of_items: machine-made
items:
  beads: {of_version: 1, name: "koraliki", one: "koralik", alt: "Rzecz.", care: ["Przetrzyj."], swap_note: "Duże"}
  towel: {of_version: 1, name: "ręczniki", one: "ręcznik", alt: "Rzecz.", care: ["Przetrzyj."]}
)";

inline Catalogue translated(const std::string &activity, const std::string &itemWords)
{
    const std::vector<SourceFile> files{{"languages/pl/items.yaml", itemWords},
                                        {"languages/pl/pebble-post.yaml", activity}};
    return translate(loadActivity(soundActivity), files);
}

} // namespace samples
