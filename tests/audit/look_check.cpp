#include "tests/audit/look_check.h"

#include "tests/audit/findings.h"
#include "tests/audit/hidden.h"

namespace lidlark::audit {

namespace {

constexpr double textRatio = 4.5;
constexpr double largeRatio = 3.0;
constexpr double largePixels = 24;
constexpr double largeBoldPixels = 18.66;
/// Fewer dots are the corner of a letter at the edge of what is in view.
constexpr int leastDots = 6;

/// Of words that are higher than what is in view, so much is looked at.
constexpr double enoughLines = 48;

std::vector<QQuickItem *> itemsOf(const std::vector<Part> &parts)
{
    std::vector<QQuickItem *> items;
    items.reserve(parts.size());
    for (const Part &part : parts)
        items.push_back(part.item);
    return items;
}

QImage without(const std::vector<Part> &parts, QQuickWindow *window)
{
    const Hidden hidden(itemsOf(parts));
    return window->grabWindow();
}

double wantedOf(const QQuickItem *words)
{
    const QFont font = words->property("font").value<QFont>();
    const bool large =
        font.pixelSize() >= largePixels || (font.bold() && font.pixelSize() >= largeBoldPixels);
    return large ? largeRatio : textRatio;
}

bool isEnough(const Part &part, const QRectF &seen)
{
    return seen.height() + 1 >= std::min(part.where.height(), enoughLines) &&
           seen.width() + 1 >= part.where.width();
}

} // namespace

void WordsLook::look(const Page &page)
{
    const QImage whole = m_window->grabWindow();
    const QImage wordless = without(page.words(), m_window);
    for (const Part &words : page.words()) {
        const QRectF seen = inView(words, m_window);
        if (!isEnough(words, seen) || seen.height() <= m_sights[words.item].height)
            continue;
        const Ink ink = inkOf(whole, wordless, seen.toAlignedRect());
        if (ink.pixels >= leastDots)
            m_sights[words.item] = {seen.height(), ink};
    }
}

QStringList WordsLook::findings(const Page &page, bool wholePage) const
{
    QStringList findings;
    for (const Part &words : page.words()) {
        const Sight sight = m_sights[words.item];
        const bool lookedAt = wholePage || inView(words, m_window) == words.where;
        if (sight.height > 0 && sight.ink.ratio < wantedOf(words.item) && !isInactive(words.item))
            findings.append(QStringLiteral("faint words, %1:1 (%2 on %3): %4")
                                .arg(shown(sight.ink.ratio), sight.ink.colour.name(),
                                     sight.ink.ground.name(), quoted(words.name)));
        if (sight.height == 0 && lookedAt && !page.isPartlyCovered() &&
            !words.name.trimmed().isEmpty())
            findings.append(
                QStringLiteral("words that are never seen: %1").arg(quoted(words.name)));
    }
    return findings;
}

namespace {

/// Of a drawing that is only lines this is a line of its length.
constexpr double leastShare = 0.02;
/// The length of the shortest stitch below a word, two pixels thick.
constexpr int leastMark = 24;

QString faintPicture(const Part &picture, const QImage &whole, const QImage &bare,
                     const QQuickWindow *window)
{
    const Ink ink = inkOf(whole, bare, inView(picture, window).toAlignedRect());
    if (ink.pixels < leastDots || ink.seen >= ink.pixels * leastShare)
        return {};
    return QStringLiteral("faint picture, %1:1: %2").arg(shown(ink.ratio), picture.name);
}

QString faintControl(const Part &control, const QImage &wordless, const QImage &bare,
                     const QQuickWindow *window)
{
    const QRectF seen = inView(control, window);
    if (seen.height() + 1 < control.where.height())
        return {};
    const Ink ink = inkOf(wordless, bare, seen.adjusted(-6, -6, 6, 6).toAlignedRect());
    if (ink.seen >= leastMark)
        return {};
    return QStringLiteral("nothing but its words shows that it can be touched: %1 %2")
        .arg(control.type, quoted(control.name));
}

} // namespace

QStringList checkParts(const Page &page)
{
    QStringList findings;
    QQuickWindow *window = page.window();
    const QImage whole = window->grabWindow();
    const QImage pictureless = without(page.pictures(), window);
    const QImage wordless = without(page.words(), window);
    const QImage controlless = without(page.controls(), window);
    const auto add = [&findings](const QString &finding) {
        if (!finding.isEmpty())
            findings.append(finding);
    };
    for (const Part &picture : page.pictures()) {
        if (!isInactive(picture.item))
            add(faintPicture(picture, whole, pictureless, window));
    }
    for (const Part &control : page.controls()) {
        // What is written on has its edge round it.
        const bool field =
            control.item->inherits("QQuickTextInput") || control.item->inherits("QQuickTextEdit");
        const bool wholePage = control.item->objectName() == QStringLiteral("wake");
        if (!isInactive(control.item) && !field && !wholePage)
            add(faintControl(control, wordless, controlless, window));
    }
    return findings;
}

namespace {

/// What says that a control is chosen, by the names of the design system.
QByteArray choiceOf(const QQuickItem *control)
{
    for (const char *name : {"picked", "pegged", "current", "chosen", "speaking"}) {
        if (control->metaObject()->indexOfProperty(name) >= 0)
            return name;
    }
    return {};
}

QString checkOne(const Part &control, const QByteArray &choice, QQuickWindow *window)
{
    const QRect where = inView(control, window).adjusted(-10, -10, 10, 10).toAlignedRect();
    const QVariant before = control.item->property(choice);
    const QImage one = window->grabWindow();
    control.item->setProperty(choice, !before.toBool());
    QCoreApplication::processEvents();
    const QImage other = window->grabWindow();
    control.item->setProperty(choice, before);
    QCoreApplication::processEvents();
    if (greyDifference(one, other, where) >= leastMark)
        return {};
    return QStringLiteral("in grey nothing tells \"%1\" from not: %2 %3")
        .arg(QString::fromLatin1(choice), control.type, quoted(control.name));
}

} // namespace

QStringList checkChosen(const Page &page)
{
    QStringList findings;
    QSet<QString> done;
    for (const Part &control : page.controls()) {
        const QByteArray choice = choiceOf(control.item);
        const bool seen = inView(control, page.window()).height() + 1 >= control.where.height();
        if (choice.isEmpty() || !seen || done.contains(control.type))
            continue;
        done.insert(control.type);
        const QString finding = checkOne(control, choice, page.window());
        if (!finding.isEmpty())
            findings.append(finding);
    }
    return findings;
}

} // namespace lidlark::audit
