#include "tests/audit/stop_audit.h"

#include "tests/audit/hand_check.h"
#include "tests/audit/look_check.h"
#include "tests/audit/touch_check.h"
#include "tests/audit/words_check.h"

#include <QQmlEngine>

namespace lidlark::audit {

namespace {

constexpr QSize ordinary{360, 800};
constexpr QSize smallest{320, 568};
constexpr QSize tablet{768, 1024};
constexpr QSize lying{740, 360};
/// The whole collection is much longer, of rows that are all alike.
constexpr int mostPlaces = 8;

QString named(const Shown &way)
{
    static const QStringList schemes{QStringLiteral("light"), QStringLiteral("dark"),
                                     QStringLiteral("contrast")};
    return QStringLiteral("%1x%2 %3 % %4")
        .arg(way.size.width())
        .arg(way.size.height())
        .arg(static_cast<int>(way.textScale * 100))
        .arg(schemes.at(way.scheme));
}

QObject *themeOf(QQuickWindow *window)
{
    const int theme = qmlTypeId("Lidlark.Design", 1, 0, "Theme");
    return qmlEngine(window)->singletonInstance<QObject *>(theme);
}

double dotsPerMm(QQuickWindow *window)
{
    return themeOf(window)->property("dotsPerMm").toDouble();
}

/// Time stands still as long as this lives: no screen goes quiet, or on, by itself.
class NoTimers
{
public:
    explicit NoTimers(QQuickItem *under) { stop(under); }
    ~NoTimers()
    {
        for (QObject *timer : m_stopped)
            timer->setProperty("running", true);
    }
    NoTimers(const NoTimers &) = delete;
    NoTimers &operator=(const NoTimers &) = delete;

private:
    void stop(QQuickItem *item)
    {
        for (QObject *child : item->children()) {
            if (child->inherits("QQmlTimer") && child->property("running").toBool()) {
                child->setProperty("running", false);
                m_stopped.push_back(child);
            }
        }
        for (QQuickItem *child : item->childItems())
            stop(child);
    }

    std::vector<QObject *> m_stopped;
};

double mostOf(const QQuickItem *scroller)
{
    return std::max(0.0, scroller->property("contentHeight").toDouble() - scroller->height());
}

/// All that scrolls, moved on by most of what it shows. @returns false when nothing moved.
bool scrollOn(const std::vector<QQuickItem *> &scrollers)
{
    constexpr double overlap = 60;
    bool moved = false;
    for (QQuickItem *scroller : scrollers) {
        const double before = scroller->property("contentY").toDouble();
        const double step = std::max(scroller->height() - overlap, scroller->height() / 2);
        const double after = std::min(before + step, mostOf(scroller));
        if (after > before + 1) {
            scroller->setProperty("contentY", after);
            moved = true;
        }
    }
    return moved;
}

void scrollToTop(const std::vector<QQuickItem *> &scrollers)
{
    for (QQuickItem *scroller : scrollers)
        scroller->setProperty("contentY", 0);
}

/// Where words are tightest and where they are usual. A language in a script that another is looked
/// at in differs in its words alone; a scheme changes colours, moves nothing, and is the same in
/// every language. So the other sizes and the schemes are looked at in one; right to left in each
/// size is the slow mode's.
std::vector<Shown> fewWays(const QString &language)
{
    std::vector<Shown> ways{{smallest, 2.0, 0}, {ordinary, 1.0, 0}};
    if (language == QLatin1String("en"))
        ways.insert(ways.end(), {{tablet, 1.0, 0},
                                 {lying, 1.0, 0},
                                 {lying, 2.0, 0},
                                 {smallest, 2.0, 1},
                                 {smallest, 2.0, 2},
                                 {ordinary, 1.0, 1},
                                 {ordinary, 1.0, 2}});
    return ways;
}

} // namespace

std::vector<Shown> everyWay(const QString &language)
{
    if (!qEnvironmentVariableIsSet("LIDLARK_LONG"))
        return fewWays(language);
    std::vector<Shown> ways;
    for (const QSize size : {smallest, ordinary, tablet, lying}) {
        for (const double scale : {1.0, 2.0}) {
            for (const int scheme : {0, 1, 2})
                ways.push_back({size, scale, scheme});
        }
    }
    return ways;
}

StopAudit::StopAudit(const test::Stop &stop, QString language)
    : m_stop(stop), m_language(std::move(language))
{
}

void StopAudit::run()
{
    const NoTimers still(m_stop.window->contentItem());
    for (const Shown &way : everyWay(m_language))
        lookAt(way);
    test::Wander::layOut(m_stop, test::Wander::firstSize, 1.0, 0);
}

void StopAudit::lookAt(const Shown &way)
{
    test::Wander::layOut(m_stop, way.size, way.textScale, way.scheme);
    const Page page(m_stop.window);
    scrollToTop(page.scrollers());
    // Where things lie does not depend on their colours.
    if (way.scheme == 0) {
        const Page top(m_stop.window);
        add(checkWords(top), way);
        add(checkTouch(top), way);
        add(checkChildsTouch(top, dotsPerMm(m_stop.window)), way);
    }
    add(lookAtWords(), way);
    const bool first = way.size == ordinary && way.textScale < 1.5;
    if (first || (way.size == smallest && way.textScale > 1.5 && way.scheme == 0))
        add(checkParts(Page(m_stop.window)), way);
    if (first) {
        add(checkChosen(Page(m_stop.window)), way);
        add(checkHands(m_stop.window, themeOf(m_stop.window)), way);
    }
}

QStringList StopAudit::lookAtWords() const
{
    WordsLook words(m_stop.window);
    bool more = true;
    for (int place = 0; more && place < mostPlaces; ++place) {
        const Page page(m_stop.window);
        words.look(page);
        more = scrollOn(page.scrollers());
    }
    const Page page(m_stop.window);
    scrollToTop(page.scrollers());
    return words.findings(Page(m_stop.window), !more);
}

void StopAudit::add(const QStringList &findings, const Shown &way)
{
    if (!findings.isEmpty()) {
        const QDir folder(QStringLiteral(LIDLARK_FINDINGS));
        (void)folder.mkpath(QStringLiteral("."));
        const QString file =
            QStringLiteral("%1-%2-%3.png").arg(m_language, m_stop.name, named(way));
        (void)m_stop.window->grabWindow().save(folder.filePath(file));
    }
    for (const QString &finding : findings)
        m_findings[finding].append(named(way));
}

QStringList StopAudit::findings() const
{
    QStringList lines;
    for (auto finding = m_findings.begin(); finding != m_findings.end(); ++finding) {
        const QStringList &ways = finding.value();
        const QString more =
            ways.size() > 1 ? QStringLiteral(" (and %1 more)").arg(ways.size() - 1) : QString();
        lines.append(QStringLiteral("%1, %2, %3%4: %5")
                         .arg(m_stop.name, ways.constFirst(), m_language, more, finding.key()));
    }
    return lines;
}

} // namespace lidlark::audit
