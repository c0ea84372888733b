#include "graph.h"

#include <QQmlApplicationEngine>

#include "app_clock.h"

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/crew_life.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/reminders.h"
#include "mobile/bridge/sitting.h"
#include "mobile/bridge/text.h"
#include "mobile/platform/silent_notifier.h"

// The catalogue and the drawings lie in a library of their own, which nothing else would pull in.
static void openAssets()
{
    Q_INIT_RESOURCE(lidlark_assets);
    Q_INIT_RESOURCE(lidlark_catalogue);
    Q_INIT_RESOURCE(lidlark_composed);
}

namespace lidlark::mobile {

namespace {

Household::Places placesFrom(const StartOptions &options)
{
    openAssets();
    Household::Places places;
    places.store = options.store;
    places.language = options.language;
    if (!options.catalogue.isEmpty())
        places.catalogue = options.catalogue;
    return places;
}

} // namespace

Graph::Graph(const StartOptions &options, std::unique_ptr<Voice> voice,
             std::unique_ptr<Notifier> notifier, std::shared_ptr<Keychain> keychain)
    : m_language(options.language),
      m_household(std::make_unique<Household>(placesFrom(options), clockFrom(options),
                                              std::make_unique<SystemEntropy>())),
      m_sitting(std::make_unique<Sitting>(m_household.get())),
      m_playInHand(std::make_unique<PlayInHand>(m_household.get())),
      m_appearance(std::make_unique<Appearance>(m_household.get())),
      m_notifier(notifier ? std::move(notifier) : std::make_unique<SilentNotifier>()),
      m_reminders(std::make_unique<Reminders>(m_household.get(), m_notifier.get())),
      m_voice(voice ? std::move(voice) : std::make_unique<Voice>()),
      m_crewLife(std::make_unique<CrewLife>(m_household.get(), std::move(keychain))),
      m_engine(std::make_unique<QQmlApplicationEngine>())
{
    if (options.textScale || options.scheme || options.reducedMotion)
        m_appearance->tryOn(options.textScale.value_or(m_appearance->textScale()),
                            options.scheme.value_or(m_appearance->scheme()),
                            options.reducedMotion || m_appearance->reducedMotion());
    m_language.speak(m_household->language());
    QObject::connect(m_household.get(), &Household::languageChanged, m_household.get(),
                     [this] { changeLanguage(); });
    // What was put back is worth telling the others; what a screen does next comes first.
    QObject::connect(m_playInHand.get(), &PlayInHand::ended, m_crewLife.get(),
                     &CrewLife::shareByItself, Qt::QueuedConnection);
    m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine->setInitialProperties({
        {QStringLiteral("household"), QVariant::fromValue(m_household.get())},
        {QStringLiteral("sitting"), QVariant::fromValue(m_sitting.get())},
        {QStringLiteral("playInHand"), QVariant::fromValue(m_playInHand.get())},
        {QStringLiteral("appearance"), QVariant::fromValue(m_appearance.get())},
        {QStringLiteral("reminders"), QVariant::fromValue(m_reminders.get())},
        {QStringLiteral("voice"), QVariant::fromValue(m_voice.get())},
        {QStringLiteral("crewLife"), QVariant::fromValue(m_crewLife.get())},
    });
}

Graph::~Graph()
{
    m_engine.reset(); // the screens go before what they show
}

/// The screens read themselves anew after this: they hear of the change later.
void Graph::changeLanguage()
{
    m_language.speak(m_household->language());
    m_playInHand->reload();
    m_voice->changeLanguage();
    m_crewLife->look(); // what it has said was said in the language before
    m_engine->retranslate();
}

bool Graph::show()
{
    m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Lidlark/App/Main.qml")));
    return !m_engine->rootObjects().isEmpty();
}

} // namespace lidlark::mobile
