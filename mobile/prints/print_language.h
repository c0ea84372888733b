#pragma once

#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"
#include "mobile/bridge/written_language.h"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace lidlark::mobile {

/// A language that a print is written in: its words, and what things are called in it.
class PrintLanguage
{
public:
    /// @param catalogue in that language; outlives this.
    PrintLanguage(const QString &code, const catalogue::Catalogue &catalogue);

    [[nodiscard]] const Tongue &tongue() const { return *m_tongue; }
    [[nodiscard]] const catalogue::Catalogue &catalogue() const { return *m_catalogue; }
    [[nodiscard]] bool fromTheRight() const { return m_tongue->language().rightToLeft; }
    /// Its digits are others than those of @p other.
    [[nodiscard]] bool countsOtherwiseThan(const PrintLanguage &other) const;

    [[nodiscard]] QString tell(const wording::Sentence &sentence) const;
    [[nodiscard]] QString number(std::int64_t value) const;
    /// "£220.34" with the language's digits and decimal sign. @param currency ISO 4217.
    [[nodiscard]] QString money(std::int64_t pence, const std::string &currency) const;
    /// "Not yet checked", in the language itself; empty where somebody has.
    [[nodiscard]] QString unchecked() const { return m_tongue->unchecked(); }

    /// "stick-on eyes", one of them "stick-on eye"; an item of a newer catalogue by its id.
    [[nodiscard]] wording::Argument nameOf(const ItemId &item, int pieces) const;
    /// "Stick-on eyes", to stand by itself.
    [[nodiscard]] QString title(const ItemId &item, int pieces) const;
    [[nodiscard]] QString drawingOf(const ItemId &item) const;

private:
    std::shared_ptr<const WrittenLanguage> m_tongue; ///< Pages keep their language: it is shared.
    const catalogue::Catalogue *m_catalogue;
};

/// One or two of them, the first the page's own.
using PrintLanguages = std::vector<PrintLanguage>;

} // namespace lidlark::mobile
