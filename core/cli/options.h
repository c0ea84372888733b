#pragma once

#include "core/base/clock.h"
#include "core/base/entropy.h"
#include "core/catalogue/catalogue.h"
#include "core/usecase/workplace.h"

#include <memory>
#include <optional>
#include <string>

namespace lidlark::cli {

/// Exit status (design.md 11).
inline constexpr int allWell = 0;
inline constexpr int problemInData = 1;
inline constexpr int wrongUse = 2;

/// What every command may be given.
struct Options {
    std::string store;
    std::string clock;     ///< ISO 8601 instant; empty: the system's clock.
    std::string catalogue; ///< Folder; empty: the one this program was built with.
    bool json = false;
};

/// The options made real: an open store, a clock, the catalogue.
class Desk
{
public:
    /// Opens an existing store. A store that nobody has set up yet is an error too.
    /// @param child whose box the catalogue is for; empty: the only one of the store, or none.
    static Result<std::unique_ptr<Desk>> open(const Options &options,
                                              const std::string &child = {});

    [[nodiscard]] usecase::Workplace &workplace() { return *m_workplace; }
    [[nodiscard]] store::Database &database() { return *m_database; }
    /// With the therapist's own entries for that box.
    [[nodiscard]] const catalogue::Catalogue &catalogue() const { return m_workplace->catalogue; }
    [[nodiscard]] const catalogue::Catalogue &builtIn() const { return m_catalogue; }

private:
    Desk() = default;
    Outcome layOwnOver(const std::string &child);

    catalogue::Catalogue m_catalogue;
    std::optional<catalogue::Catalogue> m_withOwn; ///< Where the box has any.
    std::unique_ptr<Clock> m_clock;
    std::unique_ptr<Entropy> m_entropy;
    std::unique_ptr<store::Database> m_database;
    std::unique_ptr<usecase::Workplace> m_workplace;
};

/// Reads the catalogue's folder; what is wrong with it goes to standard error, a line each.
catalogue::Catalogue readCatalogue(const Options &options);

/// The catalogue with these files in place of those of the same name: a file in a folder
/// "activities" is an activity, any other an item. Its problems are part of it.
/// @returns NotFound with the name of a file that cannot be read.
Result<catalogue::Catalogue> editedCatalogue(const Options &options,
                                             const std::vector<std::string> &files);

/// The same, every file an activity wherever it lies.
Result<catalogue::Catalogue> catalogueWithActivities(const Options &options,
                                                     const std::vector<std::string> &files);

/// @returns Invalid when --clock is not an instant.
Result<std::unique_ptr<Clock>> clockFrom(const Options &options);

/// Prints the error's sentence to standard error. @returns problemInData.
int fail(const Error &error);
/// The same for what `fit` and `goals` reckon, whose sentences there would read as an answer:
/// "No answer: " and the reason.
int noAnswer(const std::string &reason);

} // namespace lidlark::cli
