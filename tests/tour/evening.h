#pragma once

#include "mobile/app/graph.h"
#include "tests/tour/account.h"
#include "tests/tour/page_reading.h"

#include <QSize>
#include <QString>

#include <optional>

namespace lidlark::test {

/// How the phone is held and set up while the evening is walked.
struct PhoneInHand {
    QSize size{360, 740};
    std::optional<double> textScale;
    std::optional<int> scheme; ///< 0 light, 1 dark, 2 contrast.
    bool rightToLeft = false;
    bool reducedMotion = false;
    QString language = {}; ///< "ur", "pseudo"; empty: of whoever writes on the phone.
    std::vector<PageCheck> checks{hardToRead};
    bool leftHanded = false;
};

/// How the app is started on @p store at @p clock for that phone.
[[nodiscard]] mobile::StartOptions startOn(const PhoneInHand &phone, const QString &store,
                                           const QString &clock);

/// What a walk left: its account, and where it went wrong.
struct Evening {
    QString text;
    QString failed;       ///< Empty: walked to the end, and the store tells the same evening.
    QStringList findings; ///< What the checks of each page found.
};

/// Walks one evening with Fin on the real screens, tapping by accessible name: who is here, kite,
/// menu, play, put-back with an exception, box, notebook, crew, home sheet, settings, count. Makes
/// the demo island in @p folder, leaves NN-name.png there, and ends with what `lidlark-cli box` and
/// `verify` read from the store. One application object must exist.
[[nodiscard]] Evening walkAnEvening(const QDir &folder, const PhoneInHand &phone);

} // namespace lidlark::test
