<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pl" sourcelanguage="en">
    <context>
        <name>AboutMeScreen</name>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>It forgets what you played after a year.</source>
            <translation>Po roku zapomina, w co się bawisz.</translation>
        </message>
        <message>
            <source>It has no photo of you. It does not listen. It does not know where you are.</source>
            <translation>Nie ma twojego zdjęcia. Nie podsłuchuje. Nie wie, gdzie jesteś.</translation>
        </message>
        <message>
            <source>It knows what is in your box, and what got lost or used up.</source>
            <translation>Wie, co jest w twoim pudełku i co zginęło albo się skończyło.</translation>
        </message>
        <message>
            <source>It knows what you played, and on which day.</source>
            <translation>Wie, w co się bawisz i którego dnia.</translation>
        </message>
        <message>
            <source>It knows which kite you tapped. After 90 days it forgets.</source>
            <translation>Wie, którego latawca dotykasz. Po 90 dniach zapomina.</translation>
        </message>
        <message>
            <source>Only the grown-ups with this phone can see it.</source>
            <translation>Widzą to tylko dorośli z tym telefonem.</translation>
        </message>
        <message>
            <source>Read this to me</source>
            <translation>Przeczytaj mi to</translation>
        </message>
        <message>
            <source>Stop reading</source>
            <translation>Przestań czytać</translation>
        </message>
        <message>
            <source>This phone knows the name %1, and how old you are.</source>
            <translation>Ten telefon zna imię %1 i wie, ile masz lat.</translation>
        </message>
        <message>
            <source>What this keeps about me</source>
            <translation>Co to o mnie pamięta</translation>
        </message>
        <message>
            <source>You can ask a grown-up to show you. You can ask them to take something out.</source>
            <translation>Możesz poprosić dorosłego, żeby ci to pokazał. Możesz poprosić, żeby coś usunął.</translation>
        </message>
        <message>
            <source>You never have to tap a kite.</source>
            <translation>Nigdy nie musisz dotykać latawca.</translation>
        </message>
        <message>
            <source>Your grown-ups can see it. Others can see a part, and only if your grown-ups let them in.</source>
            <translation>Widzą to twoi dorośli. Inni widzą część, i tylko gdy twoi dorośli ich wpuszczą.</translation>
        </message>
        <message>
            <source>Your grown-ups tell %1 what you played.</source>
            <translation>Twoi dorośli mówią, w co się bawisz. Słyszy to: %1.</translation>
        </message>
    </context>
    <context>
        <name>AdditionList</name>
        <message>
            <source>Put in: %1</source>
            <translation>Włóż: %1</translation>
        </message>
    </context>
    <context>
        <name>AgeKeys</name>
        <message>
            <source>%1 or more</source>
            <translation>%1 lub więcej</translation>
        </message>
        <message>
            <source>%1: age in years</source>
            <translation>%1: wiek w latach</translation>
        </message>
        <message>
            <source>under 1</source>
            <translation>poniżej 1</translation>
        </message>
    </context>
    <context>
        <name>AppScreens</name>
        <message>
            <source>Back to today</source>
            <translation>Wróć do „Dziś”</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Schowaj</translation>
        </message>
        <message>
            <source>This page could not be opened. Nothing was changed.</source>
            <translation>Nie udało się otworzyć tej strony. Nic się nie zmieniło.</translation>
        </message>
    </context>
    <context>
        <name>AreaChoice</name>
        <message>
            <source>Which part of daily life is it about? The offers go by this.</source>
            <translation>O jaką część dnia codziennego chodzi? Od tego zależą propozycje.</translation>
        </message>
    </context>
    <context>
        <name>AvoidQuestion</name>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Don't know</source>
            <translation>Nie wiem</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nie</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Tak</translation>
        </message>
    </context>
    <context>
        <name>AwayPage</name>
        <message>
            <source>&quot;Don't know&quot; is a good answer. It counts as yes until somebody knows.</source>
            <translation>„Nie wiem” to dobra odpowiedź. Liczy się jako „tak”, dopóki ktoś się nie dowie.</translation>
        </message>
    </context>
    <context>
        <name>BeforeAndNow</name>
        <message>
            <source>adult: hold</source>
            <translation>dorosły: trzymaj</translation>
        </message>
        <message>
            <source>before</source>
            <translation>przed</translation>
        </message>
        <message>
            <source>now</source>
            <translation>teraz</translation>
        </message>
    </context>
    <context>
        <name>BoardPane</name>
        <message>
            <source>What you wrote is not kept yet. Keep it, or go back, before you open something else.</source>
            <translation>To, co napisano, nie jest jeszcze zapisane. Zapisz albo wróć, zanim otworzysz coś innego.</translation>
        </message>
    </context>
    <context>
        <name>BoxOfChildScreen</name>
        <message>
            <source>%1's box</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>Wróć do warsztatu</translation>
        </message>
        <message>
            <source>Change the box</source>
            <translation>Zmień pudełko</translation>
        </message>
        <message>
            <source>Goals</source>
            <translation>Cele</translation>
        </message>
        <message>
            <source>Handing over</source>
            <translation>Przekazanie</translation>
        </message>
        <message>
            <source>Plan a video session</source>
            <translation>Zaplanuj spotkanie wideo</translation>
        </message>
        <message>
            <source>Shared by the family</source>
            <translation>Czym dzieli się rodzina</translation>
        </message>
        <message>
            <source>Six lines: the parent does each</source>
            <translation>Sześć zdań: każde robi rodzic</translation>
        </message>
        <message>
            <source>To print</source>
            <translation>Do druku</translation>
        </message>
        <message>
            <source>What is asked for</source>
            <translation>O co jest prośba</translation>
        </message>
    </context>
    <context>
        <name>BoxPartCard</name>
        <message>
            <source>%1, why: %2</source>
            <translation>%1, dlaczego: %2</translation>
        </message>
        <message>
            <source>As designed</source>
            <translation>Według wzoru</translation>
        </message>
        <message>
            <source>In your own words, if you like</source>
            <translation>Własnymi słowami, jeśli chcesz</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Pomiń</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
        <message>
            <source>Put in instead: %1</source>
            <translation>Włóż zamiast tego: %1</translation>
        </message>
        <message>
            <source>Why does it differ?</source>
            <translation>Dlaczego jest inaczej?</translation>
        </message>
        <message>
            <source>Why it differs</source>
            <translation>Dlaczego jest inaczej</translation>
        </message>
    </context>
    <context>
        <name>BoxScreen</name>
        <message>
            <source>%1's box</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>Box is here</source>
            <translation>Pudełko jest tutaj</translation>
        </message>
        <message>
            <source>Count it all</source>
            <translation>Policz wszystko</translation>
        </message>
        <message>
            <source>Count it all together</source>
            <translation>Policzcie wszystko razem</translation>
        </message>
        <message>
            <source>Not here</source>
            <translation>Nie ma tutaj</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>Zapisane dziś</translation>
        </message>
        <message>
            <source>Nothing on the lid list</source>
            <translation>Lista z wieczka jest pusta</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>Na papierze</translation>
        </message>
        <message>
            <source>Play needs nothing from the box, then. Count again when something has come.</source>
            <translation>Do zabawy nie trzeba więc nic z pudełka. Policz znowu, gdy coś przyjdzie.</translation>
        </message>
        <message>
            <source>Print the new list</source>
            <translation>Wydrukuj nową listę</translation>
        </message>
        <message>
            <source>Said on this phone: not here. Only games that need nothing from the box are offered.</source>
            <translation>Zapisane na tym telefonie: nie ma go tutaj. Są tylko zabawy, do których nie trzeba nic z pudełka.</translation>
        </message>
        <message>
            <source>The last count was a month ago.</source>
            <translation>Ostatnie liczenie było miesiąc temu.</translation>
        </message>
        <message>
            <source>The lid list and more, to print</source>
            <translation>Lista na wieczko i więcej, do druku</translation>
        </message>
        <message>
            <source>The new list is on the lid</source>
            <translation>Nowa lista jest na wieczku</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Spróbuj znowu</translation>
        </message>
        <message>
            <source>What to ask for</source>
            <translation>O co poprosić</translation>
        </message>
    </context>
    <context>
        <name>BuildBoxScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>Wróć, nic się nie zmienia</translation>
        </message>
        <message>
            <source>Box %1</source>
            <translation>Pudełko %1</translation>
        </message>
        <message>
            <source>Fill it in for %1</source>
            <translation>Uzupełnij dla: %1</translation>
        </message>
        <message>
            <source>Fill it in for a child: what the home must avoid is swapped or left out.</source>
            <translation>Uzupełnij dla dziecka: to, czego dom musi unikać, jest zamieniane lub pomijane.</translation>
        </message>
        <message>
            <source>Keep this box</source>
            <translation>Zapisz to pudełko</translation>
        </message>
        <message>
            <source>Left hand</source>
            <translation>Lewa ręka</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>Nie podano</translation>
        </message>
        <message>
            <source>Right hand</source>
            <translation>Prawa ręka</translation>
        </message>
        <message>
            <source>Take this box out of the build</source>
            <translation>Wyjmij to pudełko z partii</translation>
        </message>
        <message>
            <source>Which hand cuts?</source>
            <translation>Która ręka tnie?</translation>
        </message>
        <message>
            <source>Whose box, by alias; empty: nobody's yet</source>
            <translation>Czyje pudełko (pseudonim); puste: jeszcze niczyje</translation>
        </message>
    </context>
    <context>
        <name>BuildHead</name>
        <message>
            <source>A day earlier</source>
            <translation>Dzień wcześniej</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>Dzień później</translation>
        </message>
        <message>
            <source>Currency, three letters</source>
            <translation>Waluta, trzy litery</translation>
        </message>
        <message>
            <source>Name of the build</source>
            <translation>Nazwa partii</translation>
        </message>
        <message>
            <source>Of what play uses up, rounded up to a whole piece.</source>
            <translation>Z tego, co zużywa się w zabawie, w górę do całej sztuki.</translation>
        </message>
        <message>
            <source>One percent less</source>
            <translation>Jeden procent mniej</translation>
        </message>
        <message>
            <source>One percent more</source>
            <translation>Jeden procent więcej</translation>
        </message>
        <message>
            <source>Packed on %1</source>
            <translation>Pakowanie: %1</translation>
        </message>
        <message>
            <source>Spares, percent</source>
            <translation>Zapas, procent</translation>
        </message>
        <message>
            <source>Spring boxes</source>
            <translation>Pudełka na wiosnę</translation>
        </message>
    </context>
    <context>
        <name>BuildScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 dla: %2</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Boxes: %1</source>
            <translation>Pudełka: %1</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>Arkusz zakupów</translation>
        </message>
        <message>
            <source>Change name, day, spares</source>
            <translation>Zmień nazwę, dzień, zapas</translation>
        </message>
        <message>
            <source>Keep this</source>
            <translation>Zapisz to</translation>
        </message>
        <message>
            <source>Leave it as it was</source>
            <translation>Zostaw, jak było</translation>
        </message>
        <message>
            <source>Special</source>
            <translation>Inne niż zwykle</translation>
        </message>
        <message>
            <source>There is no box in it yet</source>
            <translation>Nie ma w niej jeszcze pudełka</translation>
        </message>
    </context>
    <context>
        <name>BuildSheetScreen</name>
        <message>
            <source>At the till: whole packs, spares among them. What is left over lies on the shelf afterwards, without a lot until you write what stands on the new packs.</source>
            <translation>Przy kasie: całe opakowania, także zapas. To, co zostanie, leży potem na półce, bez numeru serii, dopóki nie wpiszesz tego, co jest na nowych opakowaniach.</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Kupione</translation>
        </message>
        <message>
            <source>Build sheet: %1</source>
            <translation>Arkusz zakupów: %1</translation>
        </message>
        <message>
            <source>Everything for these boxes is there. A box that is added is bought for by itself.</source>
            <translation>Do tych pudełek jest już wszystko. Do dodanego pudełka dokupuje się osobno.</translation>
        </message>
        <message>
            <source>In each of them: %1</source>
            <translation>W każdym z nich: %1</translation>
        </message>
        <message>
            <source>Is all of it bought, at these prices?</source>
            <translation>Czy wszystko jest kupione, po tych cenach?</translation>
        </message>
        <message>
            <source>Is all of it set aside?</source>
            <translation>Czy wszystko jest odłożone?</translation>
        </message>
        <message>
            <source>It is set aside for these boxes, and what is left over is on the shelf. This cannot be taken back; the shelf can be put right by hand.</source>
            <translation>Zostaje odłożone do tych pudełek, a reszta trafia na półkę. Tego nie można cofnąć; półkę można poprawić ręcznie.</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Jeszcze nie</translation>
        </message>
        <message>
            <source>Set aside</source>
            <translation>Odłóż</translation>
        </message>
        <message>
            <source>To be put right first</source>
            <translation>Najpierw do poprawienia</translation>
        </message>
        <message>
            <source>What is in each box</source>
            <translation>Co jest w każdym pudełku</translation>
        </message>
        <message>
            <source>What the pieces in one box are worth: each its share of its pack. This is not what you pay today.</source>
            <translation>Ile warte są rzeczy w jednym pudełku: każda jako część opakowania. To nie to, co dziś płacisz.</translation>
        </message>
        <message>
            <source>What you spend today</source>
            <translation>Tyle dziś wydajesz</translation>
        </message>
        <message>
            <source>Yes, all of it</source>
            <translation>Tak, wszystko</translation>
        </message>
    </context>
    <context>
        <name>BuildsScreen</name>
        <message>
            <source>A build is a pile of boxes that are bought for and packed together.</source>
            <translation>Partia to pudełka, do których kupuje się rzeczy i które pakuje się razem.</translation>
        </message>
        <message>
            <source>A build is a pile of boxes that are bought for and packed together. First say what belongs in a kind of box.</source>
            <translation>Partia to pudełka, do których kupuje się rzeczy i które pakuje się razem. Najpierw powiedz, co należy do jednego rodzaju pudełka.</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Begin this build</source>
            <translation>Zacznij tę partię</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>Partie i zakupy</translation>
        </message>
        <message>
            <source>Kinds of box</source>
            <translation>Rodzaje pudełek</translation>
        </message>
        <message>
            <source>New build</source>
            <translation>Nowa partia</translation>
        </message>
        <message>
            <source>No build yet</source>
            <translation>Nie ma jeszcze partii</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Nie teraz</translation>
        </message>
        <message>
            <source>Shelf and shops</source>
            <translation>Półka i sklepy</translation>
        </message>
        <message>
            <source>What belongs in each, and how much play it brings.</source>
            <translation>Co do którego należy i ile daje zabawy.</translation>
        </message>
        <message>
            <source>What builds are made of</source>
            <translation>Z czego powstają partie</translation>
        </message>
        <message>
            <source>What lies there, packs and prices.</source>
            <translation>Co tam leży, opakowania i ceny.</translation>
        </message>
    </context>
    <context>
        <name>BurstScreen</name>
        <message>
            <source>All pieces found</source>
            <translation>Są wszystkie kawałki</translation>
        </message>
        <message>
            <source>Can't find a piece</source>
            <translation>Brakuje kawałka</translation>
        </message>
    </context>
    <context>
        <name>CameraLink</name>
        <message>
            <source>Read the squares with the camera</source>
            <translation>Odczytaj kratki aparatem</translation>
        </message>
    </context>
    <context>
        <name>CameraPage</name>
        <message>
            <source>Hold this phone so that the squares of the other one lie inside the frame. They stand below its nine words.</source>
            <translation>Trzymaj ten telefon tak, by kratki z drugiego telefonu leżały w ramce. Są tam pod dziewięcioma słowami.</translation>
        </message>
        <message>
            <source>No picture is kept. The camera goes off when the squares are read, or when you leave this page.</source>
            <translation>Żadne zdjęcie nie zostaje. Aparat wyłącza się, gdy kratki są odczytane albo gdy wyjdziesz z tej strony.</translation>
        </message>
        <message>
            <source>The camera shows nothing. Perhaps another app is using it, or Lidlark may not. The nine words do the same.</source>
            <translation>Aparat nic nie pokazuje. Może używa go inna aplikacja albo Lidlark nie ma na to zgody. Dziewięć słów wystarczy tak samo.</translation>
        </message>
        <message>
            <source>These squares say something else. Lidlark's stand below the nine words.</source>
            <translation>W tych kratkach jest coś innego. Kratki Lidlark są pod dziewięcioma słowami.</translation>
        </message>
        <message>
            <source>What the camera sees</source>
            <translation>Co widzi aparat</translation>
        </message>
    </context>
    <context>
        <name>CatalogueFacts</name>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>Alergeny</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Dbanie</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Na co uważać</translation>
        </message>
        <message>
            <source>How long it keeps</source>
            <translation>Jak długo wytrzymuje</translation>
        </message>
        <message>
            <source>In a standard box</source>
            <translation>W zwykłym pudełku</translation>
        </message>
        <message>
            <source>In its place</source>
            <translation>Zamiast tego</translation>
        </message>
        <message>
            <source>Measures</source>
            <translation>Wymiary</translation>
        </message>
        <message>
            <source>Never issued again to another child.</source>
            <translation>Nigdy nie trafia do innego dziecka.</translation>
        </message>
        <message>
            <source>None known</source>
            <translation>Żadne nie są znane</translation>
        </message>
        <message>
            <source>Nothing small and no long cord.</source>
            <translation>Nic małego ani długiego sznurka.</translation>
        </message>
        <message>
            <source>Nothing: it has no size to go by.</source>
            <translation>Nic: nie ma wymiaru, który by coś mówił.</translation>
        </message>
        <message>
            <source>Washing</source>
            <translation>Mycie</translation>
        </message>
        <message>
            <source>What follows from them</source>
            <translation>Co z nich wynika</translation>
        </message>
    </context>
    <context>
        <name>ChildPage</name>
        <message>
            <source>How many years old?</source>
            <translation>Ile ma lat?</translation>
        </message>
        <message>
            <source>No surname, no birth date. Everything stays on this phone.</source>
            <translation>Bez nazwiska, bez daty urodzenia. Wszystko zostaje na tym telefonie.</translation>
        </message>
        <message>
            <source>Whose box is it? A first name or a letter</source>
            <translation>Czyje to pudełko? Imię albo litera</translation>
        </message>
        <message>
            <source>Without an age only a few things are offered, the safest ones. No surname, no birth date. Everything stays on this phone.</source>
            <translation>Bez wieku propozycji jest niewiele, tylko te najbezpieczniejsze. Bez nazwiska, bez daty urodzenia. Wszystko zostaje na tym telefonie.</translation>
        </message>
        <message>
            <source>Without an age only a few things are offered, the safest ones. No surname, no birth date. Whoever is in the crew of this box reads it.</source>
            <translation>Bez wieku proponujemy tylko kilka najbezpieczniejszych rzeczy. Bez nazwiska i daty urodzenia. Czyta to każdy z załogi tego pudełka.</translation>
        </message>
    </context>
    <context>
        <name>ChildSwitch</name>
        <message>
            <source>%1's box</source>
            <translation>Pudełko: %1</translation>
        </message>
    </context>
    <context>
        <name>ChooseScreen</name>
        <message>
            <source>Read aloud</source>
            <translation>Czytaj na głos</translation>
        </message>
        <message>
            <source>You choose. We play together.</source>
            <translation>Wybierasz ty. Bawimy się razem.</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>dorosły: przytrzymaj</translation>
        </message>
        <message>
            <source>adult: hold to begin</source>
            <translation>przytrzymaj: start</translation>
        </message>
        <message>
            <source>hold</source>
            <translation>przytrzymaj</translation>
        </message>
    </context>
    <context>
        <name>ClinicScreen</name>
        <message>
            <source>Begin</source>
            <translation>Zacznij</translation>
        </message>
        <message>
            <source>From your own other phone, or a colleague's with whom you pack</source>
            <translation>Z Twojego drugiego telefonu albo od osoby, z którą pakujesz</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>Mam kod</translation>
        </message>
        <message>
            <source>Of children you write a first name or a letter: no surname, no birth date, no diagnosis.</source>
            <translation>O dzieciach wpisujesz imię albo literę: bez nazwiska, daty urodzenia i diagnozy.</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>Strona wstecz</translation>
        </message>
        <message>
            <source>What belongs in a box, what to buy, packing, and which box needs what: all on this phone, without an account and without a signal.</source>
            <translation>Co należy do pudełka, co kupić, pakowanie i czego które pudełko potrzebuje: wszystko na tym telefonie, bez konta i bez zasięgu.</translation>
        </message>
        <message>
            <source>What do families call you?</source>
            <translation>Jak mówią do Ciebie rodziny?</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>Najpierw twoje imię; wystarczy litera.</translation>
        </message>
        <message>
            <source>Your workbench</source>
            <translation>Twój warsztat</translation>
        </message>
    </context>
    <context>
        <name>CoachingScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Handing over to %1's home</source>
            <translation>Przekazanie do domu: %1</translation>
        </message>
        <message>
            <source>The parent does each of these while you are there. The ticks stay on this phone.</source>
            <translation>Rodzic robi każdą z tych rzeczy przy tobie. Znaczki zostają w tym telefonie.</translation>
        </message>
    </context>
    <context>
        <name>CodeShown</name>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>A new code</source>
            <translation>Nowy kod</translation>
        </message>
        <message>
            <source>For one phone, until %1. After that a new code takes one tap.</source>
            <translation>Dla jednego telefonu, do %1. Potem nowy kod to jedno dotknięcie.</translation>
        </message>
        <message>
            <source>On the other phone: open Lidlark, tap &quot;I have a code&quot;, and type these nine words, in this order.</source>
            <translation>Na drugim telefonie otwórz Lidlark, dotknij „Mam kod” i wpisz te dziewięć słów w tej kolejności.</translation>
        </message>
        <message>
            <source>The code in squares, for another phone's camera</source>
            <translation>Kod w kratkach, dla aparatu drugiego telefonu</translation>
        </message>
        <message>
            <source>The same in squares, for its camera</source>
            <translation>To samo w kratkach, dla jego aparatu</translation>
        </message>
        <message>
            <source>Waiting for the other phone.</source>
            <translation>Czekamy na drugi telefon.</translation>
        </message>
    </context>
    <context>
        <name>CountOne</name>
        <message>
            <source>All %1 here</source>
            <translation>Jest wszystko: %1</translation>
        </message>
        <message>
            <source>It is here</source>
            <translation>Jest</translation>
        </message>
        <message>
            <source>None here</source>
            <translation>Nie ma nic</translation>
        </message>
        <message>
            <source>One more: %1, %2 counted</source>
            <translation>Jedno więcej: %1, policzone: %2</translation>
        </message>
    </context>
    <context>
        <name>CountResult</name>
        <message>
            <source>All as expected</source>
            <translation>Wszystko się zgadza</translation>
        </message>
        <message>
            <source>The count holds from now on, on every phone that shares the box.</source>
            <translation>To liczenie obowiązuje od teraz, na każdym telefonie, który ma to pudełko.</translation>
        </message>
        <message>
            <source>What differs</source>
            <translation>Co się różni</translation>
        </message>
    </context>
    <context>
        <name>CountScreen</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 z %2</translation>
        </message>
        <message>
            <source>Back to the box</source>
            <translation>Wróć do pudełka</translation>
        </message>
        <message>
            <source>Count it all</source>
            <translation>Policz wszystko</translation>
        </message>
        <message>
            <source>Count it first</source>
            <translation>Najpierw policz</translation>
        </message>
        <message>
            <source>Count together what lies in the box now, and look each one over. What is missing is only missing.</source>
            <translation>Policzcie razem, co teraz leży w pudełku, i obejrzyjcie każdą rzecz. Czego brakuje, tego tylko brakuje.</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>Policzone</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Dalej</translation>
        </message>
        <message>
            <source>One back</source>
            <translation>Jedno wstecz</translation>
        </message>
        <message>
            <source>One by one, with the pictures</source>
            <translation>Po kolei, z obrazkami</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
        <message>
            <source>See the list</source>
            <translation>Zobacz listę</translation>
        </message>
        <message>
            <source>That's what is here</source>
            <translation>Tyle tu jest</translation>
        </message>
    </context>
    <context>
        <name>CrewLinks</name>
        <message>
            <source>Another parent, family, a guest, the therapist</source>
            <translation>Drugi rodzic, rodzina, gość, terapeuta</translation>
        </message>
        <message>
            <source>For %1 to read, or to have read aloud</source>
            <translation>Do czytania, samemu albo na głos: %1</translation>
        </message>
        <message>
            <source>Hand over a file</source>
            <translation>Przekaż plik</translation>
        </message>
        <message>
            <source>Let somebody in</source>
            <translation>Wpuść kogoś</translation>
        </message>
        <message>
            <source>None. Sharing is off.</source>
            <translation>Brak. Udostępnianie jest wyłączone.</translation>
        </message>
        <message>
            <source>Shared place</source>
            <translation>Wspólne miejsce</translation>
        </message>
        <message>
            <source>Sharing with others</source>
            <translation>Udostępnianie innym</translation>
        </message>
        <message>
            <source>The phone of somebody who packs too</source>
            <translation>Telefon kogoś, kto też pakuje</translation>
        </message>
        <message>
            <source>What each can see</source>
            <translation>Co kto widzi</translation>
        </message>
        <message>
            <source>What this keeps about me</source>
            <translation>Co to o mnie pamięta</translation>
        </message>
        <message>
            <source>Where there is no network: on a stick, or from phone to phone</source>
            <translation>Gdzie nie ma sieci: na pamięci albo z telefonu na telefon</translation>
        </message>
    </context>
    <context>
        <name>CrewScreen</name>
        <message>
            <source>Crew</source>
            <translation>Załoga</translation>
        </message>
        <message>
            <source>Families on this phone</source>
            <translation>Rodziny na tym telefonie</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>Karta domu</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ustawienia</translation>
        </message>
        <message>
            <source>Text size, light and dark</source>
            <translation>Wielkość tekstu, jasno i ciemno</translation>
        </message>
        <message>
            <source>Text size, light and dark, the kite</source>
            <translation>Wielkość tekstu, jasno i ciemno, latawiec</translation>
        </message>
        <message>
            <source>What Lidlark is not</source>
            <translation>Czym Lidlark nie jest</translation>
        </message>
        <message>
            <source>Who lives here, what must stay away</source>
            <translation>Kto tu mieszka, czego tu nie może być</translation>
        </message>
    </context>
    <context>
        <name>DesignScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>Wróć, nic się nie zmienia</translation>
        </message>
        <message>
            <source>Begin with our standard box</source>
            <translation>Zacznij od naszego zwykłego pudełka</translation>
        </message>
        <message>
            <source>Keep this kind of box</source>
            <translation>Zapisz ten rodzaj pudełka</translation>
        </message>
        <message>
            <source>New kind of box</source>
            <translation>Nowy rodzaj pudełka</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
        <message>
            <source>Standard box</source>
            <translation>Zwykłe pudełko</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Wyjmij</translation>
        </message>
        <message>
            <source>Use this kind of box no more</source>
            <translation>Nie używaj już tego rodzaju pudełka</translation>
        </message>
        <message>
            <source>What this kind of box is called</source>
            <translation>Jak nazywa się ten rodzaj pudełka</translation>
        </message>
    </context>
    <context>
        <name>DesignsScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Kinds of box</source>
            <translation>Rodzaje pudełek</translation>
        </message>
        <message>
            <source>New kind of box</source>
            <translation>Nowy rodzaj pudełka</translation>
        </message>
        <message>
            <source>No kind of box yet</source>
            <translation>Nie ma jeszcze rodzaju pudełka</translation>
        </message>
        <message>
            <source>Say once what belongs in the standard box. Each child's box is then written as what differs from it.</source>
            <translation>Powiedz raz, co należy do zwykłego pudełka. Pudełko dziecka zapisuje się potem jako różnicę.</translation>
        </message>
    </context>
    <context>
        <name>DifferentRow</name>
        <message>
            <source>It was in a mouth</source>
            <translation>Było w buzi</translation>
        </message>
        <message>
            <source>It was left open</source>
            <translation>Zostało otwarte</translation>
        </message>
        <message>
            <source>Left open: noted.</source>
            <translation>Zostało otwarte: zapisane.</translation>
        </message>
    </context>
    <context>
        <name>DifferentScreen</name>
        <message>
            <source>Back to the tray</source>
            <translation>Wróć do tacy</translation>
        </message>
        <message>
            <source>How many?</source>
            <translation>Ile?</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>Coś jest inaczej</translation>
        </message>
        <message>
            <source>The rest is back</source>
            <translation>Reszta wróciła</translation>
        </message>
    </context>
    <context>
        <name>DriedOutScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>It has dried out</source>
            <translation>Wyschło</translation>
        </message>
        <message>
            <source>It is soft again</source>
            <translation>Znów jest miękkie</translation>
        </message>
        <message>
            <source>Still hard: throw it away</source>
            <translation>Dalej twarde: wyrzuć</translation>
        </message>
        <message>
            <source>That happens. It keeps its date if it is rescued.</source>
            <translation>To się zdarza. Po uratowaniu data się nie zmienia.</translation>
        </message>
        <message>
            <source>Throw it away</source>
            <translation>Wyrzuć</translation>
        </message>
        <message>
            <source>Thrown away, another is asked for.</source>
            <translation>Po wyrzuceniu prosimy o nowe.</translation>
        </message>
        <message>
            <source>Try to rescue it</source>
            <translation>Spróbuj uratować</translation>
        </message>
    </context>
    <context>
        <name>EmergencyScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>What happened?</source>
            <translation>Co się stało?</translation>
        </message>
    </context>
    <context>
        <name>EndedScreen</name>
        <message>
            <source>The box, closed</source>
            <translation>Zamknięte pudełko</translation>
        </message>
        <message>
            <source>The family can ask you again.</source>
            <translation>Rodzina może poprosić cię znowu.</translation>
        </message>
        <message>
            <source>They ended on %1. What you noted stays with the family, signed %2.</source>
            <translation>Skończyły się %1. Twoje zapisy zostają u rodziny, z podpisem: %2.</translation>
        </message>
        <message>
            <source>Your days with this box are over</source>
            <translation>Twoje dni z tym pudełkiem się skończyły</translation>
        </message>
    </context>
    <context>
        <name>EverythingScreen</name>
        <message>
            <source>Back to today</source>
            <translation>Wróć do „Dziś”</translation>
        </message>
        <message>
            <source>Everything for %1</source>
            <translation>Wszystko dla: %1</translation>
        </message>
        <message>
            <source>Find by name, thing or skill</source>
            <translation>Szukaj: nazwa, rzecz lub umiejętność</translation>
        </message>
        <message>
            <source>Fits just now</source>
            <translation>Pasuje teraz</translation>
        </message>
        <message>
            <source>Held back, and why</source>
            <translation>Wstrzymane i dlaczego</translation>
        </message>
        <message>
            <source>Nothing is called that</source>
            <translation>Nic się tak nie nazywa</translation>
        </message>
        <message>
            <source>Nothing to play is called that.</source>
            <translation>Żadna zabawa tak się nie nazywa.</translation>
        </message>
        <message>
            <source>Things</source>
            <translation>Rzeczy</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Spróbuj znowu</translation>
        </message>
        <message>
            <source>Try one word, such as dough or paper.</source>
            <translation>Wpisz jedno słowo, na przykład ciastolina albo papier.</translation>
        </message>
    </context>
    <context>
        <name>ExceptionRow</name>
        <message>
            <source>%1 %2: %3</source>
            <translation>%2: %1. %3</translation>
        </message>
    </context>
    <context>
        <name>FactCard</name>
        <message>
            <source>What the catalogue knows</source>
            <translation>Co wie katalog</translation>
        </message>
    </context>
    <context>
        <name>Families</name>
        <message>
            <source>Another family's box</source>
            <translation>Pudełko innej rodziny</translation>
        </message>
        <message>
            <source>Bring it back</source>
            <translation>Przywróć</translation>
        </message>
        <message>
            <source>Bring it back: %1</source>
            <translation>Przywróć: %1</translation>
        </message>
        <message>
            <source>For whoever looks after several children. Nothing is shared between the families.</source>
            <translation>Dla osób, które opiekują się kilkorgiem dzieci. Nic nie przechodzi z jednej rodziny do drugiej.</translation>
        </message>
        <message>
            <source>Gone for good when Lidlark is closed.</source>
            <translation>Po zamknięciu Lidlark zniknie na dobre.</translation>
        </message>
        <message>
            <source>Off this phone: %1</source>
            <translation>Usunięte z tego telefonu: %1</translation>
        </message>
    </context>
    <context>
        <name>FewOffers</name>
        <message>
            <source>Everything</source>
            <translation>Wszystko</translation>
        </message>
        <message>
            <source>Nothing fits just now</source>
            <translation>Teraz nic nie pasuje</translation>
        </message>
    </context>
    <context>
        <name>FloorScreen</name>
        <message>
            <source>First say above what is found</source>
            <translation>Najpierw zapisz wyżej, co jest</translation>
        </message>
        <message>
            <source>Floor checked, not found</source>
            <translation>Podłoga sprawdzona, nie ma</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Znalezione</translation>
        </message>
    </context>
    <context>
        <name>ForgetKites</name>
        <message>
            <source>Forget every kite %1 has shown</source>
            <translation>Zapomnij wszystkie latawce: %1</translation>
        </message>
        <message>
            <source>Forget them</source>
            <translation>Zapomnij</translation>
        </message>
        <message>
            <source>Forgotten.</source>
            <translation>Zapomniane.</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>Zachowaj</translation>
        </message>
        <message>
            <source>They are gone for good then, here and on the other phones of this home.</source>
            <translation>Znikną wtedy na dobre, tutaj i na innych telefonach tego domu.</translation>
        </message>
        <message>
            <source>They go by themselves after 90 days.</source>
            <translation>Po 90 dniach znikają same.</translation>
        </message>
    </context>
    <context>
        <name>FoundRow</name>
        <message>
            <source>%1: %2 found</source>
            <translation>%1: znalezione %2</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Znalezione</translation>
        </message>
        <message>
            <source>How many are found?</source>
            <translation>Ile się znalazło?</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
    </context>
    <context>
        <name>GoalCard</name>
        <message>
            <source>How is it going?</source>
            <translation>Jak idzie?</translation>
        </message>
        <message>
            <source>How is it going? %1</source>
            <translation>Jak idzie? %1</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Potem</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Teraz</translation>
        </message>
        <message>
            <source>Now, and further than we expected</source>
            <translation>Teraz, i dalej, niż oczekiwaliśmy</translation>
        </message>
        <message>
            <source>The whole goal</source>
            <translation>Cały cel</translation>
        </message>
        <message>
            <source>The whole goal: %1</source>
            <translation>Cały cel: %1</translation>
        </message>
    </context>
    <context>
        <name>GoalEndingScreen</name>
        <message>
            <source>A goal comes to an end</source>
            <translation>Cel się kończy</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Choose one of the three</source>
            <translation>Wybierz jedno z trzech</translation>
        </message>
        <message>
            <source>End this goal</source>
            <translation>Zakończ ten cel</translation>
        </message>
        <message>
            <source>It then stands under “Earlier goals”, with its steps and all that was said of it. The offers no longer go by it. You can take it up again.</source>
            <translation>Będzie potem pod „Wcześniejsze cele”, z poziomami i wszystkim, co o nim powiedziano. Propozycje już od niego nie zależą. Można do niego wrócić.</translation>
        </message>
        <message>
            <source>Why, in your own words (may be left out)</source>
            <translation>Dlaczego, własnymi słowami (można pominąć)</translation>
        </message>
    </context>
    <context>
        <name>GoalNumbersScreen</name>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Counts less: %1</source>
            <translation>Waży mniej: %1</translation>
        </message>
        <message>
            <source>Counts more: %1</source>
            <translation>Waży więcej: %1</translation>
        </message>
        <message>
            <source>Goals stand in the notebook, in words.</source>
            <translation>Cele są w zeszycie, słowami.</translation>
        </message>
        <message>
            <source>How much each goal counts</source>
            <translation>Ile waży każdy cel</translation>
        </message>
        <message>
            <source>Kiresuk and Sherman 1968, with the goals taken to go together by 0.3. Goals that nobody has rated are left out.</source>
            <translation>Kiresuk i Sherman 1968, przy założonym związku celów 0,3. Cele, których nikt nie ocenił, pominięto.</translation>
        </message>
        <message>
            <source>Nothing has been rated yet.</source>
            <translation>Niczego jeszcze nie oceniono.</translation>
        </message>
        <message>
            <source>Nothing here for families</source>
            <translation>Tu nie ma nic dla rodzin</translation>
        </message>
        <message>
            <source>Numbers, for therapists</source>
            <translation>Liczby, dla terapeutów</translation>
        </message>
        <message>
            <source>Steps come in an order. The T-value takes them for even ones.</source>
            <translation>Poziomy mają kolejność. Wartość T traktuje je jak równe kroki.</translation>
        </message>
        <message>
            <source>T-value of the goals that were rated, by rater</source>
            <translation>Wartość T ocenionych celów, według osoby</translation>
        </message>
        <message>
            <source>Two raters may differ by twenty and more. Read the words first. It is no grade of the child, and families do not see it.</source>
            <translation>Dwie osoby mogą różnić się o dwadzieścia i więcej. Najpierw czytaj słowa. To nie ocena dziecka i rodziny tego nie widzą.</translation>
        </message>
    </context>
    <context>
        <name>GoalRatingScreen</name>
        <message>
            <source>A day earlier</source>
            <translation>Dzień wcześniej</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>Dzień później</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Choose a step, and who says so</source>
            <translation>Wybierz poziom i kto tak mówi</translation>
        </message>
        <message>
            <source>How is it going?</source>
            <translation>Jak idzie?</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Zachowaj</translation>
        </message>
        <message>
            <source>Of which day: %1</source>
            <translation>Którego dnia: %1</translation>
        </message>
        <message>
            <source>Said so far</source>
            <translation>Powiedziano dotąd</translation>
        </message>
        <message>
            <source>Their name</source>
            <translation>Imię</translation>
        </message>
        <message>
            <source>Who says so</source>
            <translation>Kto tak mówi</translation>
        </message>
    </context>
    <context>
        <name>GoalScreen</name>
        <message>
            <source>A goal with %1</source>
            <translation>Cel: %1</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>End this goal</source>
            <translation>Zakończ ten cel</translation>
        </message>
        <message>
            <source>How is it going?</source>
            <translation>Jak idzie?</translation>
        </message>
        <message>
            <source>It had ended, and goes on</source>
            <translation>Był zakończony i trwa dalej</translation>
        </message>
        <message>
            <source>Other words</source>
            <translation>Inne słowa</translation>
        </message>
        <message>
            <source>Take this goal up again</source>
            <translation>Wróć do tego celu</translation>
        </message>
        <message>
            <source>This goal has ended</source>
            <translation>Ten cel jest zakończony</translation>
        </message>
    </context>
    <context>
        <name>GoalWritingScreen</name>
        <message>
            <source>A goal with %1</source>
            <translation>Cel: %1</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Five steps: what somebody could see on the day of the review</source>
            <translation>Pięć poziomów: co ktoś mógłby zobaczyć w dniu powrotu</translation>
        </message>
        <message>
            <source>Look at what stands under a step; it keeps nothing from being agreed on. Agreed words stay as they are.</source>
            <translation>Spójrz, co stoi pod poziomem; to nie przeszkadza w uzgodnieniu. Uzgodnione słowa już się nie zmieniają.</translation>
        </message>
        <message>
            <source>Look it over</source>
            <translation>Sprawdź</translation>
        </message>
        <message>
            <source>Opens his lunch tub at school</source>
            <translation>Otwiera w szkole pudełko z drugim śniadaniem</translation>
        </message>
        <message>
            <source>Other words for a goal</source>
            <translation>Inne słowa celu</translation>
        </message>
        <message>
            <source>Read it aloud together. Agreed words stay as they are.</source>
            <translation>Przeczytajcie to razem na głos. Uzgodnione słowa już się nie zmieniają.</translation>
        </message>
        <message>
            <source>Say who does what, and where. From one step to the next, let one thing change.</source>
            <translation>Napisz, kto co robi i gdzie. Między sąsiednimi poziomami niech zmienia się jedna rzecz.</translation>
        </message>
        <message>
            <source>The same after “For …” (may be left out)</source>
            <translation>To samo po słowie „Na …” (można pominąć)</translation>
        </message>
        <message>
            <source>The words so far stay, with all that was said of them. A new version begins today.</source>
            <translation>Dotychczasowe słowa zostają, ze wszystkim, co o nich powiedziano. Dziś zaczyna się nowa wersja.</translation>
        </message>
        <message>
            <source>We agree on these words</source>
            <translation>Zgadzamy się na te słowa</translation>
        </message>
        <message>
            <source>What the child will do, in the family's words</source>
            <translation>Co dziecko będzie robić, słowami rodziny</translation>
        </message>
        <message>
            <source>Why other words? (may be left out)</source>
            <translation>Dlaczego inne słowa? (można pominąć)</translation>
        </message>
        <message>
            <source>opening his lunch tub</source>
            <translation>otwieranie pudełka ze śniadaniem</translation>
        </message>
    </context>
    <context>
        <name>GoalsScreen</name>
        <message>
            <source>Agree on a goal</source>
            <translation>Uzgodnij cel</translation>
        </message>
        <message>
            <source>Agree on one with the family, in their words: something the child does on an everyday day.</source>
            <translation>Uzgodnij cel z rodziną, jej słowami: coś, co dziecko robi w zwykły dzień.</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Earlier goals</source>
            <translation>Wcześniejsze cele</translation>
        </message>
        <message>
            <source>Goals with %1</source>
            <translation>Cele: %1</translation>
        </message>
        <message>
            <source>No goal yet</source>
            <translation>Jeszcze nie ma celu</translation>
        </message>
        <message>
            <source>Numbers, for therapists</source>
            <translation>Liczby, dla terapeutów</translation>
        </message>
    </context>
    <context>
        <name>GrownUpScreen</name>
        <message>
            <source>%1 needs a grown-up</source>
            <translation>%1: potrzebny dorosły</translation>
        </message>
        <message>
            <source>An open hand</source>
            <translation>Otwarta dłoń</translation>
        </message>
        <message>
            <source>Hurt, toilet, thirsty, hungry, scared, or no? Play can wait.</source>
            <translation>Boli, toaleta, picie, jedzenie, strach albo „nie chcę”? Zabawa poczeka.</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>dorosły: przytrzymaj</translation>
        </message>
    </context>
    <context>
        <name>HandOverScreen</name>
        <message>
            <source>/home/ruth/Documents/lidlark-crew.bundle</source>
            <translation>/home/ruth/Documents/lidlark-crew.bundle</translation>
        </message>
        <message>
            <source>A file holds all that the crew shares, sealed. Give it to somebody of the crew on a stick, or send it from phone to phone.</source>
            <translation>Plik zawiera wszystko, co załoga ma wspólne, zapieczętowane. Daj go komuś z załogi na pamięci albo wyślij z telefonu na telefon.</translation>
        </message>
        <message>
            <source>A file that somebody has given you</source>
            <translation>Plik, który ktoś ci dał</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Hand over a file</source>
            <translation>Przekaż plik</translation>
        </message>
        <message>
            <source>Make a file</source>
            <translation>Zrób plik</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>Chwileczkę.</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>Otwórz</translation>
        </message>
        <message>
            <source>Where it lies first.</source>
            <translation>Najpierw podaj, gdzie leży.</translation>
        </message>
        <message>
            <source>Where it lies on this phone</source>
            <translation>Gdzie leży na tym telefonie</translation>
        </message>
    </context>
    <context>
        <name>HaveReadyRow</name>
        <message>
            <source>Here</source>
            <translation>Jest</translation>
        </message>
        <message>
            <source>Not here</source>
            <translation>Nie ma</translation>
        </message>
    </context>
    <context>
        <name>HaveReadyScreen</name>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Have ready</source>
            <translation>Przygotuj</translation>
        </message>
        <message>
            <source>No video session is planned.</source>
            <translation>Nie ma zaplanowanej sesji wideo.</translation>
        </message>
        <message>
            <source>Video session: %1</source>
            <translation>Sesja wideo: %1</translation>
        </message>
    </context>
    <context>
        <name>HomePage</name>
        <message>
            <source>Other children decide what may come out of the box, present or not. Are there any?</source>
            <translation>Od innych dzieci w domu zależy, co wolno wyjąć z pudełka, choćby nie było ich w pokoju. Są jakieś?</translation>
        </message>
        <message>
            <source>What are you called here?</source>
            <translation>Jak się tu do ciebie mówi?</translation>
        </message>
    </context>
    <context>
        <name>HomeSheetScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Emergency number</source>
            <translation>Numer alarmowy</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>Karta domu</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nie</translation>
        </message>
        <message>
            <source>No: %1</source>
            <translation>Nie: %1</translation>
        </message>
        <message>
            <source>Numbers to call</source>
            <translation>Ważne numery</translation>
        </message>
        <message>
            <source>Poison line</source>
            <translation>Numer przy zatruciu</translation>
        </message>
        <message>
            <source>Say who lives here</source>
            <translation>Powiedz, kto tu mieszka</translation>
        </message>
        <message>
            <source>They stand on top when something is wrong. Only you know which ones hold where you live.</source>
            <translation>Są na samej górze, gdy coś się stanie. Tylko ty wiesz, które działają tam, gdzie mieszkasz.</translation>
        </message>
        <message>
            <source>Until then only the safest things are offered.</source>
            <translation>Do tego czasu proponowane są tylko najbezpieczniejsze rzeczy.</translation>
        </message>
        <message>
            <source>What must leave the house</source>
            <translation>Co trzeba wynieść z domu</translation>
        </message>
        <message>
            <source>Who lives here</source>
            <translation>Kto tu mieszka</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Tak</translation>
        </message>
        <message>
            <source>Yes: %1</source>
            <translation>Tak: %1</translation>
        </message>
    </context>
    <context>
        <name>InviteLine</name>
        <message>
            <source>Read it aloud</source>
            <translation>Przeczytaj to na głos</translation>
        </message>
        <message>
            <source>To begin, say</source>
            <translation>Na początek powiedz</translation>
        </message>
    </context>
    <context>
        <name>ItemChanges</name>
        <message>
            <source>%1 back in the box</source>
            <translation>%1 z powrotem w pudełku</translation>
        </message>
        <message>
            <source>Choose a word first</source>
            <translation>Najpierw wybierz słowo</translation>
        </message>
        <message>
            <source>How many?</source>
            <translation>Ile?</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Zapisz</translation>
        </message>
        <message>
            <source>Something is gone</source>
            <translation>Czegoś ubyło</translation>
        </message>
        <message>
            <source>Still in use: how many are back in the box?</source>
            <translation>Jeszcze w użyciu: ile wróciło do pudełka?</translation>
        </message>
        <message>
            <source>What became of it?</source>
            <translation>Co się z tym stało?</translation>
        </message>
        <message>
            <source>today</source>
            <translation>dziś</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>wczoraj</translation>
        </message>
    </context>
    <context>
        <name>ItemHygiene</name>
        <message>
            <source>Replaced</source>
            <translation>Wymienione</translation>
        </message>
        <message>
            <source>Thrown away</source>
            <translation>Wyrzucone</translation>
        </message>
        <message>
            <source>Washed</source>
            <translation>Umyte</translation>
        </message>
    </context>
    <context>
        <name>ItemLook</name>
        <message>
            <source>It has dried out</source>
            <translation>Wyschło</translation>
        </message>
        <message>
            <source>It is good</source>
            <translation>W porządku</translation>
        </message>
        <message>
            <source>Thrown away</source>
            <translation>Wyrzucone</translation>
        </message>
        <message>
            <source>Time for a look</source>
            <translation>Czas obejrzeć</translation>
        </message>
    </context>
    <context>
        <name>ItemPieces</name>
        <message>
            <source>How long do you keep it once opened?</source>
            <translation>Jak długo to trzymać po otwarciu?</translation>
        </message>
        <message>
            <source>It was left open</source>
            <translation>Zostało otwarte</translation>
        </message>
        <message>
            <source>Keeps: %1</source>
            <translation>Wytrzyma: %1</translation>
        </message>
        <message>
            <source>Opened: %1</source>
            <translation>Otwarte: %1</translation>
        </message>
        <message>
            <source>When was it opened?</source>
            <translation>Kiedy zostało otwarte?</translation>
        </message>
    </context>
    <context>
        <name>ItemScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Jak dbać</translation>
        </message>
        <message>
            <source>It was in a mouth</source>
            <translation>Było w buzi</translation>
        </message>
    </context>
    <context>
        <name>ItemUse</name>
        <message>
            <source>How long it lasts</source>
            <translation>Na jak długo starczy</translation>
        </message>
        <message>
            <source>Pieces gone, week by week</source>
            <translation>Ile ubyło, tydzień po tygodniu</translation>
        </message>
    </context>
    <context>
        <name>ItemWords</name>
        <message>
            <source>%1 out</source>
            <translation>wyjęte: %1</translation>
        </message>
        <message numerus="yes">
            <source>%n still in use.</source>
            <translation>
                <numerusform>%n jeszcze w użyciu.</numerusform>
                <numerusform>%n jeszcze w użyciu.</numerusform>
                <numerusform>%n jeszcze w użyciu.</numerusform>
            </translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>prośba</translation>
        </message>
        <message>
            <source>count it</source>
            <translation>policz</translation>
        </message>
        <message>
            <source>look at it</source>
            <translation>obejrzyj</translation>
        </message>
        <message>
            <source>low</source>
            <translation>mało</translation>
        </message>
        <message>
            <source>none</source>
            <translation>brak</translation>
        </message>
        <message>
            <source>on its way</source>
            <translation>w drodze</translation>
        </message>
        <message>
            <source>throw away</source>
            <translation>wyrzuć</translation>
        </message>
        <message>
            <source>use soon</source>
            <translation>zużyj wkrótce</translation>
        </message>
        <message>
            <source>wash it</source>
            <translation>umyj</translation>
        </message>
        <message>
            <source>which?</source>
            <translation>ile?</translation>
        </message>
    </context>
    <context>
        <name>JoinScreen</name>
        <message>
            <source>Begin</source>
            <translation>Zacznij</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Dalej</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>Mam kod</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>Chwileczkę.</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>Strona wstecz</translation>
        </message>
        <message>
            <source>Read the squares</source>
            <translation>Odczytaj kratki</translation>
        </message>
        <message>
            <source>The nine words first.</source>
            <translation>Najpierw dziewięć słów.</translation>
        </message>
        <message>
            <source>The place first.</source>
            <translation>Najpierw miejsce.</translation>
        </message>
        <message>
            <source>Use words instead</source>
            <translation>Wpisz raczej słowa</translation>
        </message>
        <message>
            <source>Waiting to be let in</source>
            <translation>Czekamy na wpuszczenie</translation>
        </message>
        <message>
            <source>What you may see has come to this phone. What you note goes to the crew.</source>
            <translation>To, co możesz widzieć, jest już na tym telefonie. To, co zapiszesz, idzie do załogi.</translation>
        </message>
        <message>
            <source>Where do the phones meet?</source>
            <translation>Gdzie spotykają się telefony?</translation>
        </message>
        <message>
            <source>Who are you?</source>
            <translation>Kim jesteś?</translation>
        </message>
        <message>
            <source>You are in</source>
            <translation>Jesteś w załodze</translation>
        </message>
    </context>
    <context>
        <name>JustNotedSlip</name>
        <message>
            <source>Noted</source>
            <translation>Zapisano</translation>
        </message>
        <message>
            <source>Put it in again</source>
            <translation>Zapisz znowu</translation>
        </message>
        <message>
            <source>Put it in again: %1</source>
            <translation>Zapisz znowu: %1</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Cofnij</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>Cofnij: %1</translation>
        </message>
        <message>
            <source>Taken back</source>
            <translation>Cofnięto</translation>
        </message>
        <message>
            <source>Taken back: %1</source>
            <translation>Cofnięte: %1</translation>
        </message>
    </context>
    <context>
        <name>KiteBreathsScreen</name>
        <message>
            <source>Four kite breaths</source>
            <translation>Cztery oddechy latawca</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Dalej</translation>
        </message>
        <message>
            <source>In: string out</source>
            <translation>Wdech: rozwiń sznurek</translation>
        </message>
        <message>
            <source>Look at the kite</source>
            <translation>Spójrz na latawiec</translation>
        </message>
        <message>
            <source>Out: string in</source>
            <translation>Wydech: zwiń sznurek</translation>
        </message>
        <message>
            <source>Stop here</source>
            <translation>Tu przerwij</translation>
        </message>
        <message>
            <source>That was four. Stay near.</source>
            <translation>To były cztery. Zostań blisko.</translation>
        </message>
        <message>
            <source>The string is in.</source>
            <translation>Sznurek jest zwinięty.</translation>
        </message>
        <message>
            <source>You breathe. Your child may.</source>
            <translation>Ty oddychasz. Dziecko może z tobą, jeśli chce.</translation>
        </message>
    </context>
    <context>
        <name>KiteCard</name>
        <message>
            <source>A toddler at home? No loose pieces.</source>
            <translation>Maluch w domu? Żadnych luźnych części.</translation>
        </message>
        <message>
            <source>Clip a clothes peg on the picture. It stays while you play.</source>
            <translation>Przypnij klamerkę do obrazka. Zostaje tam, gdy się bawicie.</translation>
        </message>
        <message>
            <source>For you, before you play</source>
            <translation>Dla ciebie, przed zabawą</translation>
        </message>
        <message>
            <source>Laminated? Cut the sharp corners round.</source>
            <translation>Laminowana? Zaokrąglij ostre rogi.</translation>
        </message>
        <message>
            <source>Tape the two sides together at the top, and they stand.</source>
            <translation>Sklej obie strony u góry taśmą, a będą stać.</translation>
        </message>
        <message>
            <source>What we call it at home</source>
            <translation>Jak to nazywamy w domu</translation>
        </message>
    </context>
    <context>
        <name>KiteCorner</name>
        <message>
            <source>Show the kite</source>
            <translation>Pokaż latawiec</translation>
        </message>
    </context>
    <context>
        <name>KiteHead</name>
        <message>
            <source>Kite: not asked</source>
            <translation>Latawiec: bez pytania</translation>
        </message>
        <message>
            <source>Kite: not asked today</source>
            <translation>Latawiec: dziś jeszcze nie</translation>
        </message>
        <message>
            <source>One tap, or play without</source>
            <translation>Jedno stuknięcie albo bawcie się bez tego</translation>
        </message>
        <message>
            <source>Your own guess: %1</source>
            <translation>Twój domysł: %1</translation>
        </message>
    </context>
    <context>
        <name>KiteLines</name>
        <message>
            <source>Kite off</source>
            <translation>Latawiec wyłączony</translation>
        </message>
        <message>
            <source>My own guess</source>
            <translation>Mój domysł</translation>
        </message>
        <message>
            <source>Often suits. You know best what it did.</source>
            <translation>Często pasuje. Ty wiesz najlepiej, co to dało.</translation>
        </message>
        <message>
            <source>Show the kite</source>
            <translation>Pokaż latawiec</translation>
        </message>
        <message>
            <source>That wasn't me</source>
            <translation>To nie ja</translation>
        </message>
    </context>
    <context>
        <name>KiteScreen</name>
        <message>
            <source>Grown-up</source>
            <translation>Dorosły</translation>
        </message>
        <message>
            <source>I need a grown-up</source>
            <translation>Potrzebuję dorosłego</translation>
        </message>
        <message>
            <source>I need a grown‑up</source>
            <translation>Potrzebuję dorosłego</translation>
        </message>
        <message>
            <source>Read aloud</source>
            <translation>Czytaj na głos</translation>
        </message>
        <message>
            <source>Steady</source>
            <translation>Równo</translation>
        </message>
        <message>
            <source>Whirling</source>
            <translation>Wiruje</translation>
        </message>
        <message>
            <source>Your guess: what is the kite doing?</source>
            <translation>Twój domysł: co robi latawiec?</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>dorosły: przytrzymaj</translation>
        </message>
        <message>
            <source>hold</source>
            <translation>przytrzymaj</translation>
        </message>
    </context>
    <context>
        <name>KiteSettings</name>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>A card to print, for a clothes peg. Saved among your documents.</source>
            <translation>Karta do druku, na klamerkę. Zapisana wśród twoich dokumentów.</translation>
        </message>
        <message>
            <source>How long a touch must last</source>
            <translation>Jak długo musi trwać dotyk</translation>
        </message>
        <message>
            <source>Longer touch</source>
            <translation>Dłuższy dotyk</translation>
        </message>
        <message>
            <source>Say the kite's words aloud</source>
            <translation>Mów słowa latawca na głos</translation>
        </message>
        <message>
            <source>Shorter ones do not count on the kite's screen.</source>
            <translation>Krótsze nie liczą się na ekranie latawca.</translation>
        </message>
        <message>
            <source>Shorter touch</source>
            <translation>Krótszy dotyk</translation>
        </message>
        <message>
            <source>The kite on paper</source>
            <translation>Latawiec na papierze</translation>
        </message>
        <message>
            <source>The question and the thanks. A long touch on a picture says what it is.</source>
            <translation>Pytanie i podziękowanie. Długi dotyk obrazka mówi, co to jest.</translation>
        </message>
        <message>
            <source>any</source>
            <translation>dowolnie</translation>
        </message>
    </context>
    <context>
        <name>LearnKey</name>
        <message>
            <source>Press that switch now.</source>
            <translation>Naciśnij teraz ten przełącznik.</translation>
        </message>
        <message>
            <source>Tab or Right</source>
            <translation>Tab lub strzałka w prawo</translation>
        </message>
        <message>
            <source>The key that moves the ring on</source>
            <translation>Klawisz, który przesuwa ramkę</translation>
        </message>
    </context>
    <context>
        <name>LetInScreen</name>
        <message>
            <source>%1 is in</source>
            <translation>%1 już w załodze</translation>
        </message>
        <message>
            <source>%1 is in. What they may see is on its way to that phone.</source>
            <translation>%1 już w załodze. To, co może widzieć, jest w drodze na tamten telefon.</translation>
        </message>
        <message>
            <source>A new code</source>
            <translation>Nowy kod</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Choose a shared place</source>
            <translation>Wybierz wspólne miejsce</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>First the phones need a place where they leave what they share, and your yes to it.</source>
            <translation>Najpierw telefony potrzebują miejsca na to, co wspólne, i twojej zgody.</translation>
        </message>
        <message>
            <source>Let somebody in</source>
            <translation>Wpuść kogoś</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>Zrób kod</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>Chwileczkę.</translation>
        </message>
        <message>
            <source>Somebody is here: %1</source>
            <translation>Ktoś tu jest: %1</translation>
        </message>
        <message>
            <source>The code has ended</source>
            <translation>Kod wygasł</translation>
        </message>
        <message>
            <source>The code has ended, and nobody came in by it. A new one takes one tap.</source>
            <translation>Kod wygasł i nikt z niego nie skorzystał. Nowy to jedno dotknięcie.</translation>
        </message>
        <message>
            <source>Whom first.</source>
            <translation>Najpierw wybierz kogo.</translation>
        </message>
    </context>
    <context>
        <name>LetterBoard</name>
        <message>
            <source>A gap</source>
            <translation>Odstęp</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Nothing written</source>
            <translation>Nic nie napisano</translation>
        </message>
        <message>
            <source>One letter back</source>
            <translation>Litera wstecz</translation>
        </message>
        <message>
            <source>abcdefghijklmnopqrstuvwxyz</source>
            <translation>aąbcćdeęfghijklłmnńoópqrsśtuvwxyzźż</translation>
        </message>
    </context>
    <context>
        <name>LevelField</name>
        <message>
            <source>As it is today</source>
            <translation>Tak jest dziś</translation>
        </message>
        <message>
            <source>As it is today: %1</source>
            <translation>Tak jest dziś: %1</translation>
        </message>
    </context>
    <context>
        <name>LidListPage</name>
        <message>
            <source>Compare with the list inside your lid. Change what differs.</source>
            <translation>Porównaj z listą w twoim wieczku. Zmień, co się różni.</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
    </context>
    <context>
        <name>LifeWords</name>
        <message>
            <source>Away from home</source>
            <translation>Poza domem</translation>
        </message>
        <message>
            <source>No mess</source>
            <translation>Bez bałaganu</translation>
        </message>
        <message>
            <source>No table</source>
            <translation>Bez stołu</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>Jedna ręka</translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>Cicho</translation>
        </message>
        <message>
            <source>Someone is ill</source>
            <translation>Ktoś choruje</translation>
        </message>
        <message>
            <source>Tired</source>
            <translation>Bez sił</translation>
        </message>
    </context>
    <context>
        <name>LinkRow</name>
        <message>
            <source>%1, shown</source>
            <translation>%1, otwarte</translation>
        </message>
        <message>
            <source>shown</source>
            <translation>otwarte</translation>
        </message>
    </context>
    <context>
        <name>LookFirst</name>
        <message>
            <source>All good</source>
            <translation>Wszystko w porządku</translation>
        </message>
        <message>
            <source>Look first</source>
            <translation>Najpierw obejrzyj</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Lidlark</source>
            <translation>Lidlark</translation>
        </message>
    </context>
    <context>
        <name>MainTabs</name>
        <message>
            <source>Box</source>
            <translation>Pudełko</translation>
        </message>
        <message>
            <source>Crew</source>
            <translation>Załoga</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Zeszyt</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Miejsca</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Dziś</translation>
        </message>
        <message>
            <source>Workbench</source>
            <translation>Warsztat</translation>
        </message>
    </context>
    <context>
        <name>Member</name>
        <message>
            <source>%1, this phone</source>
            <translation>%1, ten telefon</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, do %2</translation>
        </message>
        <message>
            <source>Leave the crew</source>
            <translation>Opuść załogę</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Wyłącz z załogi</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>Wyłącz z załogi: %1</translation>
        </message>
    </context>
    <context>
        <name>Members</name>
        <message>
            <source>In the crew</source>
            <translation>W załodze</translation>
        </message>
    </context>
    <context>
        <name>MonthChips</name>
        <message>
            <source>April</source>
            <translation>Kwiecień</translation>
        </message>
        <message>
            <source>August</source>
            <translation>Sierpień</translation>
        </message>
        <message>
            <source>Birthday in</source>
            <translation>Miesiąc urodzin</translation>
        </message>
        <message>
            <source>December</source>
            <translation>Grudzień</translation>
        </message>
        <message>
            <source>February</source>
            <translation>Luty</translation>
        </message>
        <message>
            <source>January</source>
            <translation>Styczeń</translation>
        </message>
        <message>
            <source>July</source>
            <translation>Lipiec</translation>
        </message>
        <message>
            <source>June</source>
            <translation>Czerwiec</translation>
        </message>
        <message>
            <source>March</source>
            <translation>Marzec</translation>
        </message>
        <message>
            <source>May</source>
            <translation>Maj</translation>
        </message>
        <message>
            <source>November</source>
            <translation>Listopad</translation>
        </message>
        <message>
            <source>October</source>
            <translation>Październik</translation>
        </message>
        <message>
            <source>September</source>
            <translation>Wrzesień</translation>
        </message>
    </context>
    <context>
        <name>MoreBoxes</name>
        <message>
            <source>A box for %1</source>
            <translation>Pudełko dla: %1</translation>
        </message>
        <message>
            <source>A box for a child. What the home must avoid is filled in.</source>
            <translation>Pudełko dla dziecka. To, czego w domu trzeba unikać, wpisze się samo.</translation>
        </message>
        <message>
            <source>A box for each of them</source>
            <translation>Pudełko dla każdego z nich</translation>
        </message>
        <message>
            <source>Add to this build</source>
            <translation>Dodaj do tej partii</translation>
        </message>
        <message>
            <source>All of them</source>
            <translation>Wszystkie</translation>
        </message>
        <message>
            <source>Boxes that are nobody's yet</source>
            <translation>Pudełka jeszcze niczyje</translation>
        </message>
        <message>
            <source>More boxes</source>
            <translation>Więcej pudełek</translation>
        </message>
        <message>
            <source>Not after all</source>
            <translation>Jednak nie</translation>
        </message>
        <message>
            <source>One box less</source>
            <translation>Jedno pudełko mniej</translation>
        </message>
        <message>
            <source>One box more</source>
            <translation>Jedno pudełko więcej</translation>
        </message>
        <message>
            <source>Say first what belongs in a box</source>
            <translation>Najpierw powiedz, co należy do pudełka</translation>
        </message>
        <message>
            <source>What would they cost?</source>
            <translation>Ile by kosztowały?</translation>
        </message>
    </context>
    <context>
        <name>NotebookScreen</name>
        <message>
            <source>All about the goals</source>
            <translation>Wszystko o celach</translation>
        </message>
        <message>
            <source>Earlier goals</source>
            <translation>Wcześniejsze cele</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Dalej</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>Zeszyt</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>Zapisane dziś</translation>
        </message>
        <message>
            <source>Notes of your own</source>
            <translation>Własne notatki</translation>
        </message>
        <message>
            <source>Nothing here yet</source>
            <translation>Na razie pusto</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Teraz</translation>
        </message>
        <message>
            <source>The kite before and after</source>
            <translation>Latawiec przed i po</translation>
        </message>
        <message>
            <source>What you play together is written down here by itself.</source>
            <translation>To, w co się razem bawicie, zapisuje się tu samo.</translation>
        </message>
        <message>
            <source>Working towards</source>
            <translation>Do czego dążymy</translation>
        </message>
    </context>
    <context>
        <name>NotedRow</name>
        <message>
            <source>Put it in again</source>
            <translation>Zapisz znowu</translation>
        </message>
        <message>
            <source>Put it in again: %1</source>
            <translation>Zapisz znowu: %1</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Cofnij</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>Cofnij: %1</translation>
        </message>
        <message>
            <source>Taken back</source>
            <translation>Cofnięte</translation>
        </message>
    </context>
    <context>
        <name>NotedTodayScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>Zapisane dziś</translation>
        </message>
        <message>
            <source>Nothing noted today</source>
            <translation>Dziś nic nie zapisano</translation>
        </message>
        <message>
            <source>Until the day is over, each of you can take back what you noted.</source>
            <translation>Do końca dnia każdy z was może cofnąć własne zapisy.</translation>
        </message>
        <message>
            <source>What is noted stands here until the day is over. Until then it can be taken back.</source>
            <translation>To, co zapisane, widać tu do końca dnia. Do tego czasu można to cofnąć.</translation>
        </message>
    </context>
    <context>
        <name>NoticedScreen</name>
        <message>
            <source>Asked for it again</source>
            <translation>Chce jeszcze raz</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>For %1 to show, once, or not at all.</source>
            <translation>Pokazuje %1, raz albo wcale.</translation>
        </message>
        <message>
            <source>Found own way</source>
            <translation>Własny sposób</translation>
        </message>
        <message>
            <source>Needed help</source>
            <translation>Z pomocą</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Po zabawie</translation>
        </message>
        <message>
            <source>What did you notice? Only if you like.</source>
            <translation>Co widać było w zabawie? Tylko jeśli chcesz.</translation>
        </message>
        <message>
            <source>What is the kite doing now?</source>
            <translation>Co teraz robi latawiec?</translation>
        </message>
    </context>
    <context>
        <name>NumberEntry</name>
        <message>
            <source>Keep this number</source>
            <translation>Zapisz ten numer</translation>
        </message>
        <message>
            <source>Keep this number: %1</source>
            <translation>Zapisz ten numer: %1</translation>
        </message>
    </context>
    <context>
        <name>OnTheShelf</name>
        <message>
            <source>A note to yourself</source>
            <translation>Notatka dla siebie</translation>
        </message>
        <message>
            <source>Box with lid</source>
            <translation>Pudełko z pokrywką</translation>
        </message>
        <message>
            <source>Lot, as it is printed</source>
            <translation>Seria, tak jak wydrukowano</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nazwa</translation>
        </message>
        <message>
            <source>On the shelf, pieces</source>
            <translation>Na półce, sztuk</translation>
        </message>
        <message>
            <source>The catalogue does not know it. What did you look for, and find none of?</source>
            <translation>Katalog tego nie zna. Czego w tym nie ma, jeśli to sprawdzono?</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>Zużywa się w zabawie</translation>
        </message>
    </context>
    <context>
        <name>OtherChildForm</name>
        <message>
            <source>Add %1</source>
            <translation>Dodaj: %1</translation>
        </message>
        <message>
            <source>Another child: first name or a letter</source>
            <translation>Inne dziecko: imię albo litera</translation>
        </message>
        <message>
            <source>Don't know</source>
            <translation>Nie wiem</translation>
        </message>
        <message>
            <source>How many years old?</source>
            <translation>Ile ma lat?</translation>
        </message>
        <message>
            <source>No longer</source>
            <translation>Już nie</translation>
        </message>
        <message>
            <source>Still puts things in the mouth?</source>
            <translation>Jeszcze bierze rzeczy do buzi?</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Tak</translation>
        </message>
    </context>
    <context>
        <name>OtherChildRow</name>
        <message>
            <source>Take off: %1</source>
            <translation>Usuń: %1</translation>
        </message>
    </context>
    <context>
        <name>OurWayLine</name>
        <message>
            <source>Change it</source>
            <translation>Zmień</translation>
        </message>
        <message>
            <source>It stays on this home's phones. The cautions above hold all the same.</source>
            <translation>Zostaje na telefonach tego domu. Ostrzeżenia powyżej i tak obowiązują.</translation>
        </message>
        <message>
            <source>Keep our way</source>
            <translation>Zapisz nasz sposób</translation>
        </message>
        <message>
            <source>Leave it as it was</source>
            <translation>Zostaw, jak było</translation>
        </message>
        <message>
            <source>Our way</source>
            <translation>Nasz sposób</translation>
        </message>
        <message>
            <source>Our way, in one line</source>
            <translation>Nasz sposób, w jednej linijce</translation>
        </message>
        <message>
            <source>Take it off</source>
            <translation>Usuń</translation>
        </message>
        <message>
            <source>Write down your own way</source>
            <translation>Zapisz własny sposób</translation>
        </message>
    </context>
    <context>
        <name>OwnActivitiesScreen</name>
        <message>
            <source>Activities of your own</source>
            <translation>Twoje własne zabawy</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Begin with one of ours</source>
            <translation>Zacznij od jednej z naszych</translation>
        </message>
        <message>
            <source>Begin with the words of %1</source>
            <translation>Zacznij od słów: %1</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>Zamknij listę</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>Znajdź po nazwie</translation>
        </message>
        <message>
            <source>Nothing of your own yet</source>
            <translation>Jeszcze nic własnego</translation>
        </message>
        <message>
            <source>Write a new one</source>
            <translation>Napisz nową</translation>
        </message>
        <message>
            <source>Write what you play with one child, in the same parts as ours. It goes through the same checks, and then to the boxes you choose.</source>
            <translation>Opisz, w co bawisz się z jednym dzieckiem, w takich samych częściach jak nasze. Przechodzi to te same sprawdzenia, a potem trafia do wybranych pudełek.</translation>
        </message>
    </context>
    <context>
        <name>OwnActivityScreen</name>
        <message>
            <source>A draft. It is kept as you write, and nobody else sees it.</source>
            <translation>Szkic. Zapisuje się w trakcie pisania i nikt inny go nie widzi.</translation>
        </message>
        <message>
            <source>Add a step</source>
            <translation>Dodaj krok</translation>
        </message>
        <message>
            <source>An activity of your own</source>
            <translation>Twoja własna zabawa</translation>
        </message>
        <message>
            <source>Back; it is kept</source>
            <translation>Wróć; wszystko zostaje</translation>
        </message>
        <message>
            <source>Choose whose box it is for</source>
            <translation>Wybierz, do czyjego pudełka</translation>
        </message>
        <message>
            <source>Easier and harder</source>
            <translation>Łatwiej i trudniej</translation>
        </message>
        <message>
            <source>How and where</source>
            <translation>Jak i gdzie</translation>
        </message>
        <message>
            <source>Make it ready for boxes</source>
            <translation>Przygotuj do pudełek</translation>
        </message>
        <message>
            <source>Minutes, age, and how close you are</source>
            <translation>Minuty, wiek i jak blisko jesteś</translation>
        </message>
        <message>
            <source>Name and first words</source>
            <translation>Nazwa i pierwsze słowa</translation>
        </message>
        <message>
            <source>Ready for boxes. Change a word, and it is a draft again; the boxes keep what they have.</source>
            <translation>Gotowe do pudełek. Zmień słowo, a znów jest to szkic; w pudełkach zostaje to, co jest.</translation>
        </message>
        <message>
            <source>Send to the chosen boxes</source>
            <translation>Wyślij do wybranych pudełek</translation>
        </message>
        <message numerus="yes">
            <source>Something is still to do in %n parts</source>
            <translation>
                <numerusform>Jeszcze coś do zrobienia w %n części</numerusform>
                <numerusform>Jeszcze coś do zrobienia w %n częściach</numerusform>
                <numerusform>Jeszcze coś do zrobienia w %n częściach</numerusform>
            </translation>
        </message>
        <message>
            <source>Step %1</source>
            <translation>Krok %1</translation>
        </message>
        <message>
            <source>The steps</source>
            <translation>Kroki</translation>
        </message>
        <message>
            <source>What it is for</source>
            <translation>Do czego służy</translation>
        </message>
        <message>
            <source>What it is played with</source>
            <translation>Czym się bawi</translation>
        </message>
        <message>
            <source>What to mind</source>
            <translation>Na co uważać</translation>
        </message>
        <message>
            <source>What to say, and putting back</source>
            <translation>Co mówić i odkładanie</translation>
        </message>
    </context>
    <context>
        <name>OwnBoxes</name>
        <message>
            <source>Take it back</source>
            <translation>Cofnij</translation>
        </message>
        <message>
            <source>Take it back from %1's box</source>
            <translation>Cofnij z pudełka: %1</translation>
        </message>
        <message>
            <source>Whose box is it for?</source>
            <translation>Do czyjego pudełka?</translation>
        </message>
    </context>
    <context>
        <name>OwnCautionsPart</name>
        <message>
            <source>Add what to watch for</source>
            <translation>Dodaj, na co patrzeć</translation>
        </message>
        <message>
            <source>Add when to stop</source>
            <translation>Dodaj, kiedy przerwać</translation>
        </message>
        <message>
            <source>From what it is played with; these stay</source>
            <translation>Z rzeczy do zabawy; te zostają</translation>
        </message>
        <message>
            <source>More that the play itself brings</source>
            <translation>Co jeszcze niesie sama zabawa</translation>
        </message>
        <message>
            <source>What to watch for, line %1</source>
            <translation>Na co patrzeć, wiersz %1</translation>
        </message>
        <message>
            <source>When to stop, line %1</source>
            <translation>Kiedy przerwać, wiersz %1</translation>
        </message>
    </context>
    <context>
        <name>OwnFollows</name>
        <message>
            <source>At the earliest</source>
            <translation>Najwcześniej</translation>
        </message>
        <message>
            <source>What follows from its sizes</source>
            <translation>Co wynika z wymiarów</translation>
        </message>
        <message>
            <source>What there is to mind in all</source>
            <translation>Na co razem uważać</translation>
        </message>
    </context>
    <context>
        <name>OwnGradingsPart</name>
        <message>
            <source>Add a line that makes it easier</source>
            <translation>Dodaj wiersz, który ułatwia</translation>
        </message>
        <message>
            <source>Add a line that makes it harder</source>
            <translation>Dodaj wiersz, który utrudnia</translation>
        </message>
        <message>
            <source>Easier, line %1</source>
            <translation>Łatwiej, wiersz %1</translation>
        </message>
        <message>
            <source>Harder, line %1</source>
            <translation>Trudniej, wiersz %1</translation>
        </message>
    </context>
    <context>
        <name>OwnHomePart</name>
        <message>
            <source>Add a line for putting back</source>
            <translation>Dodaj wiersz o odkładaniu</translation>
        </message>
        <message>
            <source>Add something to say</source>
            <translation>Dodaj, co można powiedzieć</translation>
        </message>
        <message>
            <source>Last of all: lid on.</source>
            <translation>Na końcu: zamknij wieczko.</translation>
        </message>
        <message>
            <source>Putting back, line %1</source>
            <translation>Odkładanie, wiersz %1</translation>
        </message>
        <message>
            <source>Something to say, line %1</source>
            <translation>Co można powiedzieć, wiersz %1</translation>
        </message>
        <message>
            <source>Write a line for each thing</source>
            <translation>Napisz wiersz o każdej rzeczy</translation>
        </message>
    </context>
    <context>
        <name>OwnItemScreen</name>
        <message>
            <source>A draft. It is kept as you write, and nobody else sees it.</source>
            <translation>Szkic. Zapisuje się w trakcie pisania i nikt inny go nie widzi.</translation>
        </message>
        <message>
            <source>Back; it is kept</source>
            <translation>Wróć; wszystko zostaje</translation>
        </message>
        <message>
            <source>Choose whose box it is for</source>
            <translation>Wybierz, do czyjego pudełka</translation>
        </message>
        <message>
            <source>Its place in the box</source>
            <translation>Miejsce w pudełku</translation>
        </message>
        <message>
            <source>Its sizes</source>
            <translation>Wymiary</translation>
        </message>
        <message>
            <source>Keep it for boxes</source>
            <translation>Zachowaj dla pudełek</translation>
        </message>
        <message>
            <source>Name and picture</source>
            <translation>Nazwa i obrazek</translation>
        </message>
        <message>
            <source>One of ours, as you measured it. What it brings to mind stays, and nothing changes in a box before you send it there.</source>
            <translation>Jedna z naszych rzeczy, tak jak ją zmierzono. To, na co przy niej uważać, zostaje, a w pudełku nic się nie zmienia, zanim tam to wyślesz.</translation>
        </message>
        <message>
            <source>Ready for boxes. Change anything, and it is a draft again; the boxes keep what they have.</source>
            <translation>Gotowe do pudełek. Zmień cokolwiek, a znów jest to szkic; w pudełkach zostaje to, co jest.</translation>
        </message>
        <message>
            <source>See whom it affects</source>
            <translation>Zobacz, kogo to dotyczy</translation>
        </message>
        <message>
            <source>Send to the chosen boxes</source>
            <translation>Wyślij do wybranych pudełek</translation>
        </message>
        <message numerus="yes">
            <source>Something is still to do in %n parts</source>
            <translation>
                <numerusform>Jeszcze coś do zrobienia w %n części</numerusform>
                <numerusform>Jeszcze coś do zrobienia w %n częściach</numerusform>
                <numerusform>Jeszcze coś do zrobienia w %n częściach</numerusform>
            </translation>
        </message>
        <message>
            <source>Washing and keeping</source>
            <translation>Mycie i trwałość</translation>
        </message>
        <message>
            <source>What is in it, and what to mind</source>
            <translation>Co w tym jest i na co uważać</translation>
        </message>
    </context>
    <context>
        <name>OwnItemsScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Nothing of your own yet</source>
            <translation>Jeszcze nic własnego</translation>
        </message>
        <message>
            <source>Things of your own</source>
            <translation>Twoje własne rzeczy</translation>
        </message>
        <message>
            <source>Write a new thing</source>
            <translation>Opisz nową rzecz</translation>
        </message>
        <message>
            <source>Write and measure what you play with, and it goes through the same checks as ours. Where one of ours measures otherwise, say so on its page of the shelf.</source>
            <translation>Opisz i zmierz to, czym się bawicie, a przejdzie przez te same sprawdziany co nasze. Gdy jedna z naszych rzeczy ma inne wymiary, zaznacz to na jej stronie na półce.</translation>
        </message>
    </context>
    <context>
        <name>OwnKeepingPart</name>
        <message>
            <source>Add a line of care</source>
            <translation>Dodaj wiersz o dbaniu</translation>
        </message>
        <message>
            <source>Care, line %1</source>
            <translation>Dbanie, wiersz %1</translation>
        </message>
        <message>
            <source>How long it keeps; empty: no limit</source>
            <translation>Jak długo wytrzymuje; puste: bez granicy</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>W użyciu</translation>
        </message>
        <message>
            <source>Washing</source>
            <translation>Mycie</translation>
        </message>
        <message>
            <source>What to look for</source>
            <translation>Czego szukać</translation>
        </message>
    </context>
    <context>
        <name>OwnLine</name>
        <message>
            <source>After the ferry</source>
            <translation>Po przypłynięciu promu</translation>
        </message>
        <message>
            <source>Keep these words</source>
            <translation>Zapisz te słowa</translation>
        </message>
        <message>
            <source>When?</source>
            <translation>Kiedy?</translation>
        </message>
    </context>
    <context>
        <name>OwnLineList</name>
        <message>
            <source>%1: it changes the %2</source>
            <translation>%1: zmienia się %2</translation>
        </message>
        <message>
            <source>Take this line out</source>
            <translation>Usuń ten wiersz</translation>
        </message>
    </context>
    <context>
        <name>OwnMaterialsPart</name>
        <message>
            <source>Allergens in it</source>
            <translation>Alergeny</translation>
        </message>
        <message>
            <source>Does it hold anything that goes into no box?</source>
            <translation>Czy jest w tym coś, co nie trafia do żadnego pudełka?</translation>
        </message>
        <message>
            <source>In play it is</source>
            <translation>W zabawie jest</translation>
        </message>
        <message>
            <source>What there is to mind; what follows from its sizes stays</source>
            <translation>Na co uważać; to, co wynika z wymiarów, zostaje</translation>
        </message>
    </context>
    <context>
        <name>OwnNamesPart</name>
        <message>
            <source>Choose another picture</source>
            <translation>Wybierz inny obrazek</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>Zamknij listę</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>Znajdź po nazwie</translation>
        </message>
        <message>
            <source>Its picture</source>
            <translation>Obrazek</translation>
        </message>
        <message>
            <source>One of ours that comes close.</source>
            <translation>Jeden z naszych, najbardziej podobny.</translation>
        </message>
        <message>
            <source>One of them</source>
            <translation>Jedna sztuka</translation>
        </message>
        <message>
            <source>The picture of: %1</source>
            <translation>Obrazek: %1</translation>
        </message>
        <message>
            <source>What they are called</source>
            <translation>Jak się nazywają</translation>
        </message>
        <message>
            <source>wooden bobbin</source>
            <translation>drewniana szpulka</translation>
        </message>
        <message>
            <source>wooden bobbins</source>
            <translation>drewniane szpulki</translation>
        </message>
    </context>
    <context>
        <name>OwnNoteRow</name>
        <message>
            <source>It goes to the therapist with the next exchange.</source>
            <translation>Trafi do terapeuty przy następnej wymianie danych.</translation>
        </message>
        <message>
            <source>Keep it here</source>
            <translation>Zostaw tutaj</translation>
        </message>
        <message>
            <source>Keep it here: %1</source>
            <translation>Zostaw tutaj: %1</translation>
        </message>
        <message>
            <source>Send to the therapist</source>
            <translation>Wyślij do terapeuty</translation>
        </message>
        <message>
            <source>Send to the therapist: %1</source>
            <translation>Wyślij do terapeuty: %1</translation>
        </message>
        <message>
            <source>Take it off</source>
            <translation>Usuń</translation>
        </message>
        <message>
            <source>Take it off: %1</source>
            <translation>Usuń: %1</translation>
        </message>
    </context>
    <context>
        <name>OwnNotesScreen</name>
        <message>
            <source>A note for yourself</source>
            <translation>Notatka dla siebie</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Keep this note</source>
            <translation>Zapisz tę notatkę</translation>
        </message>
        <message>
            <source>Notes of your own</source>
            <translation>Własne notatki</translation>
        </message>
        <message>
            <source>Only you see these, on your own phones.</source>
            <translation>Widzisz je tylko ty, na swoich telefonach.</translation>
        </message>
        <message>
            <source>Or with one tap</source>
            <translation>Albo jednym stuknięciem</translation>
        </message>
    </context>
    <context>
        <name>OwnPart</name>
        <message>
            <source>Close: %1</source>
            <translation>Zamknij: %1</translation>
        </message>
        <message>
            <source>Open: %1</source>
            <translation>Otwórz: %1</translation>
        </message>
        <message>
            <source>Something is still to do here</source>
            <translation>Tu jest jeszcze coś do zrobienia</translation>
        </message>
    </context>
    <context>
        <name>OwnPlacePart</name>
        <message>
            <source>About how many go, in how many days</source>
            <translation>Ile mniej więcej ubywa, przez ile dni</translation>
        </message>
        <message>
            <source>After play</source>
            <translation>Po zabawie</translation>
        </message>
        <message>
            <source>One piece less</source>
            <translation>O jedną sztukę mniej</translation>
        </message>
        <message>
            <source>One piece more</source>
            <translation>O jedną sztukę więcej</translation>
        </message>
        <message>
            <source>Pieces in a standard box</source>
            <translation>Sztuk w zwykłym pudełku</translation>
        </message>
        <message>
            <source>Where it lies</source>
            <translation>Gdzie leży</translation>
        </message>
    </context>
    <context>
        <name>OwnReach</name>
        <message>
            <source>Nothing changes for: %1.</source>
            <translation>Nic się nie zmienia u: %1.</translation>
        </message>
        <message>
            <source>What it would change</source>
            <translation>Co by to zmieniło</translation>
        </message>
    </context>
    <context>
        <name>OwnSizesPart</name>
        <message>
            <source>A cord, lace or ribbon</source>
            <translation>Sznurek, sznurowadło albo wstążka</translation>
        </message>
        <message>
            <source>A hollow, such as a cup or a lid</source>
            <translation>Wgłębienie, jak w kubku albo wieczku</translation>
        </message>
        <message>
            <source>As small as it may get by use</source>
            <translation>Najmniejsze, jakie może się stać z użycia</translation>
        </message>
        <message>
            <source>It has</source>
            <translation>Ma</translation>
        </message>
        <message>
            <source>It wears down</source>
            <translation>Ściera się</translation>
        </message>
        <message>
            <source>One piece, as it is packed</source>
            <translation>Jedna sztuka, tak jak w pudełku</translation>
        </message>
        <message>
            <source>Plastic film: a bag or a sheet</source>
            <translation>Folia: torebka albo arkusz</translation>
        </message>
        <message>
            <source>Something comes off it, or can be pulled off</source>
            <translation>Coś odpada albo da się oderwać</translation>
        </message>
        <message>
            <source>The bag</source>
            <translation>Torebka</translation>
        </message>
        <message>
            <source>The rim</source>
            <translation>Brzeg</translation>
        </message>
        <message>
            <source>Thrown, rolled, kicked or dropped</source>
            <translation>Rzucane, toczone, kopane albo upuszczane</translation>
        </message>
        <message>
            <source>What comes off, part %1</source>
            <translation>Co odpada, część %1</translation>
        </message>
    </context>
    <context>
        <name>OwnSkillsPart</name>
        <message>
            <source>And also: two at most</source>
            <translation>I jeszcze: najwyżej dwa</translation>
        </message>
        <message>
            <source>What it is for first of all: one or two</source>
            <translation>Do czego służy przede wszystkim: jedno lub dwa</translation>
        </message>
    </context>
    <context>
        <name>OwnSolidList</name>
        <message>
            <source>A suction cup, or the tip of a dart</source>
            <translation>Przyssawka albo końcówka strzałki</translation>
        </message>
        <message>
            <source>Take these sizes out</source>
            <translation>Usuń te wymiary</translation>
        </message>
    </context>
    <context>
        <name>OwnThingsPart</name>
        <message>
            <source>Can be left out</source>
            <translation>Można pominąć</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>Zamknij listę</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>Znajdź po nazwie</translation>
        </message>
        <message>
            <source>Not with this</source>
            <translation>Bez tego</translation>
        </message>
        <message>
            <source>Not with this: %1</source>
            <translation>Bez tego: %1</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>O jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>O jedno więcej: %1</translation>
        </message>
        <message>
            <source>Put a thing in</source>
            <translation>Dodaj rzecz</translation>
        </message>
        <message>
            <source>Put in: %1</source>
            <translation>Dodaj: %1</translation>
        </message>
        <message>
            <source>Small pieces come of it</source>
            <translation>Powstają z tego małe kawałki</translation>
        </message>
    </context>
    <context>
        <name>OwnThrowAway</name>
        <message>
            <source>Boxes that have it keep it until you take it back there.</source>
            <translation>Pudełka, które to mają, zachowują to, aż je tam cofniesz.</translation>
        </message>
        <message>
            <source>No, keep it</source>
            <translation>Nie, zostaw</translation>
        </message>
        <message>
            <source>Throw this draft away</source>
            <translation>Wyrzuć ten szkic</translation>
        </message>
        <message>
            <source>Yes, throw it away</source>
            <translation>Tak, wyrzuć</translation>
        </message>
    </context>
    <context>
        <name>OwnTimePart</name>
        <message>
            <source>Half a year earlier</source>
            <translation>Pół roku wcześniej</translation>
        </message>
        <message>
            <source>Half a year later</source>
            <translation>Pół roku później</translation>
        </message>
        <message>
            <source>How close an adult is</source>
            <translation>Jak blisko jest dorosły</translation>
        </message>
        <message>
            <source>Minutes of play</source>
            <translation>Minuty zabawy</translation>
        </message>
        <message>
            <source>Minutes to get it out</source>
            <translation>Minuty na wyjęcie</translation>
        </message>
        <message>
            <source>Minutes to put it back</source>
            <translation>Minuty na odłożenie</translation>
        </message>
        <message>
            <source>One minute less to get it out</source>
            <translation>O minutę krócej na wyjęcie</translation>
        </message>
        <message>
            <source>One minute less to put it back</source>
            <translation>O minutę krócej na odłożenie</translation>
        </message>
        <message>
            <source>One minute more to get it out</source>
            <translation>O minutę dłużej na wyjęcie</translation>
        </message>
        <message>
            <source>One minute more to put it back</source>
            <translation>O minutę dłużej na odłożenie</translation>
        </message>
        <message>
            <source>One minute of play less</source>
            <translation>O minutę zabawy krócej</translation>
        </message>
        <message>
            <source>One minute of play more</source>
            <translation>O minutę zabawy dłużej</translation>
        </message>
        <message>
            <source>The earliest age; what it is played with sets the lowest</source>
            <translation>Najwcześniejszy wiek; najniższy wynika z rzeczy do zabawy</translation>
        </message>
        <message>
            <source>Why not earlier</source>
            <translation>Dlaczego nie wcześniej</translation>
        </message>
    </context>
    <context>
        <name>OwnWayPart</name>
        <message>
            <source>From a chair or a wheelchair</source>
            <translation>Z krzesła lub wózka</translation>
        </message>
        <message>
            <source>Hands it takes</source>
            <translation>Ile rąk potrzeba</translation>
        </message>
        <message>
            <source>How loud it is</source>
            <translation>Jak jest głośno</translation>
        </message>
        <message>
            <source>How the child sits or stands</source>
            <translation>Jak dziecko siedzi lub stoi</translation>
        </message>
        <message>
            <source>Room it takes</source>
            <translation>Ile miejsca potrzeba</translation>
        </message>
        <message>
            <source>Strength it takes</source>
            <translation>Ile siły potrzeba</translation>
        </message>
        <message>
            <source>What is to clean afterwards</source>
            <translation>Co trzeba potem posprzątać</translation>
        </message>
        <message>
            <source>With one hand: what holds still, what the hand does</source>
            <translation>Jedną ręką: co stoi nieruchomo, co robi ręka</translation>
        </message>
    </context>
    <context>
        <name>OwnWordsPart</name>
        <message>
            <source>Its name</source>
            <translation>Nazwa</translation>
        </message>
        <message>
            <source>What the adult does first</source>
            <translation>Co dorosły robi najpierw</translation>
        </message>
        <message>
            <source>What the child hears, in one line</source>
            <translation>Co słyszy dziecko, w jednym wierszu</translation>
        </message>
        <message>
            <source>Which bobbin rolls the longest road?</source>
            <translation>Która szpulka potoczy się najdalej?</translation>
        </message>
    </context>
    <context>
        <name>PackBoxScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 dla: %2</translation>
        </message>
        <message>
            <source>%1: not on this box's list any more</source>
            <translation>%1: już nie na liście tego pudełka</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Hand over to %1</source>
            <translation>Przekaż: %1</translation>
        </message>
        <message>
            <source>It is out</source>
            <translation>Wyjęte</translation>
        </message>
        <message>
            <source>Looked over: it is right</source>
            <translation>Sprawdzone: zgadza się</translation>
        </message>
        <message>
            <source>Say whose it is</source>
            <translation>Powiedz, czyje jest</translation>
        </message>
        <message>
            <source>The therapist's phone hands it over.</source>
            <translation>Przekaże je telefon terapeuty.</translation>
        </message>
    </context>
    <context>
        <name>PackItemScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 dla: %2</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>It is in all %1 boxes that are not special</source>
            <translation>Jest we wszystkich zwykłych pudełkach: %1</translation>
        </message>
        <message>
            <source>Next thing</source>
            <translation>Następna rzecz</translation>
        </message>
        <message>
            <source>The one before</source>
            <translation>Poprzednia</translation>
        </message>
    </context>
    <context>
        <name>PackOfferCard</name>
        <message>
            <source>%1: pieces in it</source>
            <translation>%1: sztuk w środku</translation>
        </message>
        <message>
            <source>%1: price</source>
            <translation>%1: cena</translation>
        </message>
        <message>
            <source>%1: shop</source>
            <translation>%1: sklep</translation>
        </message>
        <message>
            <source>Move up</source>
            <translation>Przenieś wyżej</translation>
        </message>
        <message>
            <source>Move up: %1</source>
            <translation>Przenieś wyżej: %1</translation>
        </message>
        <message>
            <source>Pack %1</source>
            <translation>Opakowanie %1</translation>
        </message>
        <message>
            <source>Pieces in it</source>
            <translation>Sztuk w środku</translation>
        </message>
        <message>
            <source>Price, %1</source>
            <translation>Cena, %1</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Usuń</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>Usuń: %1</translation>
        </message>
    </context>
    <context>
        <name>PackOfferList</name>
        <message>
            <source>Add a pack</source>
            <translation>Dodaj opakowanie</translation>
        </message>
        <message>
            <source>Another pack or shop</source>
            <translation>Inne opakowanie lub sklep</translation>
        </message>
        <message>
            <source>Where it is bought, first choice on top</source>
            <translation>Gdzie się to kupuje, na górze pierwszy wybór</translation>
        </message>
    </context>
    <context>
        <name>PackTick</name>
        <message>
            <source>In. Take it out again</source>
            <translation>W środku. Wyjmij</translation>
        </message>
        <message>
            <source>It is in</source>
            <translation>Jest w środku</translation>
        </message>
        <message>
            <source>It is out again</source>
            <translation>Znów wyjęte</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Lewa</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Prawa</translation>
        </message>
        <message>
            <source>Which hand is on them?</source>
            <translation>Na którą rękę są?</translation>
        </message>
    </context>
    <context>
        <name>PackersScreen</name>
        <message>
            <source>Back to the packing table</source>
            <translation>Wróć do stołu do pakowania</translation>
        </message>
        <message>
            <source>Nobody yet. Whoever you let in sees this table on their own phone, and what each of you ticks comes to the other.</source>
            <translation>Jeszcze nikt. Kogo wpuścisz, ten widzi ten stół na swoim telefonie, a co zaznaczy jedno z was, dociera do drugiego.</translation>
        </message>
        <message>
            <source>Who packs with you</source>
            <translation>Kto pakuje z tobą</translation>
        </message>
    </context>
    <context>
        <name>PackingScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 dla: %2</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Boxes of a build lie here, each with its list and its ticks.</source>
            <translation>Tu leżą pudełka do spakowania, każde z listą i znakami.</translation>
        </message>
        <message>
            <source>Boxes that came back</source>
            <translation>Pudełka, które wróciły</translation>
        </message>
        <message>
            <source>Boxes that were out</source>
            <translation>Pudełka, które były u dzieci</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>Arkusz budowy zestawów</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>Partie i zakupy</translation>
        </message>
        <message>
            <source>Clean, replace, use no more.</source>
            <translation>Czyścić, wymienić, już nie używać.</translation>
        </message>
        <message>
            <source>No boxes to pack</source>
            <translation>Nie ma pudełek do spakowania</translation>
        </message>
        <message>
            <source>On a phone of their own; ticks go both ways.</source>
            <translation>Na swoim telefonie; znaki idą w obie strony.</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>Na papierze</translation>
        </message>
        <message>
            <source>Pack item by item</source>
            <translation>Pakuj rzecz po rzeczy</translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>Lista pakowania</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>Pakowanie</translation>
        </message>
        <message>
            <source>Recall a lot</source>
            <translation>Wycofaj serię</translation>
        </message>
        <message>
            <source>Somebody packs with you</source>
            <translation>Ktoś pakuje z tobą</translation>
        </message>
        <message>
            <source>Special</source>
            <translation>Inne niż zwykle</translation>
        </message>
        <message>
            <source>Squares to tick, with what is called out.</source>
            <translation>Kwadraty do odhaczania, z uwagami do pudełek.</translation>
        </message>
        <message>
            <source>What to buy, and what is in each box.</source>
            <translation>Co kupić i co jest w każdym pudełku.</translation>
        </message>
        <message>
            <source>Which boxes hold it.</source>
            <translation>W których pudełkach leży.</translation>
        </message>
    </context>
    <context>
        <name>PagesSeen</name>
        <message>
            <source>%1, page %2 of %3</source>
            <translation>%1, strona %2 z %3</translation>
        </message>
        <message>
            <source>As it will come out</source>
            <translation>Tak to wyjdzie</translation>
        </message>
        <message>
            <source>Left half</source>
            <translation>Lewa połowa</translation>
        </message>
        <message>
            <source>Right half</source>
            <translation>Prawa połowa</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Cała strona</translation>
        </message>
    </context>
    <context>
        <name>PicturedCautions</name>
        <message>
            <source>Nothing to be careful with</source>
            <translation>Nie ma na co uważać</translation>
        </message>
        <message>
            <source>The catalogue says</source>
            <translation>Katalog mówi</translation>
        </message>
    </context>
    <context>
        <name>PlaceFields</name>
        <message>
            <source>A folder that all your phones reach: on your server (WebDAV), or one that another program keeps alike. What lies there is sealed.</source>
            <translation>Folder, do którego sięgają wszystkie wasze telefony: na waszym serwerze (WebDAV) albo taki, który inny program trzyma wszędzie jednakowy. To, co tam leży, jest zapieczętowane.</translation>
        </message>
        <message>
            <source>Address of the place</source>
            <translation>Adres miejsca</translation>
        </message>
        <message>
            <source>Name there, if it asks for one</source>
            <translation>Nazwa tam, jeśli o nią pyta</translation>
        </message>
        <message>
            <source>Password there</source>
            <translation>Hasło tam</translation>
        </message>
        <message>
            <source>Show the password</source>
            <translation>Pokaż hasło</translation>
        </message>
        <message>
            <source>https://example.org/dav/crew</source>
            <translation>https://example.org/dav/crew</translation>
        </message>
    </context>
    <context>
        <name>PlanPlace</name>
        <message>
            <source>Another</source>
            <translation>Inna</translation>
        </message>
        <message>
            <source>Another: %1, %2</source>
            <translation>Inna: %1, %2</translation>
        </message>
    </context>
    <context>
        <name>PlayDetails</name>
        <message>
            <source>All cautions</source>
            <translation>Wszystkie ostrzeżenia</translation>
        </message>
        <message>
            <source>Other ways in</source>
            <translation>Inne sposoby</translation>
        </message>
        <message>
            <source>Watch for</source>
            <translation>Uważaj na</translation>
        </message>
        <message>
            <source>You might say</source>
            <translation>Możesz powiedzieć</translation>
        </message>
    </context>
    <context>
        <name>PlayFoot</name>
        <message>
            <source>It burst</source>
            <translation>Pękł balon</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>Coś jest nie tak</translation>
        </message>
        <message>
            <source>Stop here</source>
            <translation>Tu przerwij</translation>
        </message>
    </context>
    <context>
        <name>PlayScreen</name>
        <message>
            <source>Another child's box</source>
            <translation>Pudełko innego dziecka</translation>
        </message>
        <message>
            <source>Easier</source>
            <translation>Łatwiej</translation>
        </message>
        <message>
            <source>Harder</source>
            <translation>Trudniej</translation>
        </message>
        <message>
            <source>Here, instead</source>
            <translation>Tutaj, zamiast tego</translation>
        </message>
        <message>
            <source>Less</source>
            <translation>Mniej</translation>
        </message>
        <message>
            <source>More about this</source>
            <translation>Więcej o tym</translation>
        </message>
        <message>
            <source>Next step</source>
            <translation>Następny krok</translation>
        </message>
        <message>
            <source>One step back</source>
            <translation>Krok wstecz</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Odkładanie</translation>
        </message>
        <message>
            <source>Step %1 of %2. %3</source>
            <translation>Krok %1 z %2. %3</translation>
        </message>
    </context>
    <context>
        <name>PrintBuildRoute</name>
        <message>
            <source>Back to the packing table</source>
            <translation>Wróć do stołu do pakowania</translation>
        </message>
    </context>
    <context>
        <name>PrintChoices</name>
        <message>
            <source>Box by box</source>
            <translation>Pudełko po pudełku</translation>
        </message>
        <message>
            <source>How families reach the service</source>
            <translation>Jak rodziny mogą się z wami skontaktować</translation>
        </message>
        <message>
            <source>In which order</source>
            <translation>W jakiej kolejności</translation>
        </message>
        <message>
            <source>Item by item</source>
            <translation>Rzecz po rzeczy</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Język</translation>
        </message>
        <message>
            <source>Next week</source>
            <translation>Przyszły tydzień</translation>
        </message>
        <message>
            <source>One language, or two side by side</source>
            <translation>Jeden język albo dwa obok siebie</translation>
        </message>
        <message>
            <source>Only on this page, and only if you say so.</source>
            <translation>Tylko na tej stronie i tylko jeśli tak powiesz.</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Put it on the label</source>
            <translation>Umieść na etykiecie</translation>
        </message>
        <message>
            <source>Therapy team, 01234 567890</source>
            <translation>Zespół terapii, 01234 567890</translation>
        </message>
        <message>
            <source>This week</source>
            <translation>Ten tydzień</translation>
        </message>
        <message>
            <source>Week</source>
            <translation>Tydzień</translation>
        </message>
        <message>
            <source>With what was played and noticed</source>
            <translation>Z tym, w co się bawiono i co zauważono</translation>
        </message>
    </context>
    <context>
        <name>PrintPreviewScreen</name>
        <message>
            <source>Back to all prints</source>
            <translation>Wróć do wszystkich wydruków</translation>
        </message>
        <message>
            <source>Keep it as a file</source>
            <translation>Zapisz jako plik</translation>
        </message>
        <message>
            <source>There is no page yet.</source>
            <translation>Nie ma jeszcze żadnej strony.</translation>
        </message>
    </context>
    <context>
        <name>PrintsScreen</name>
        <message>
            <source>Back to the box</source>
            <translation>Wróć do pudełka</translation>
        </message>
        <message>
            <source>Look at each page here first. It is kept as a file that any printer takes.</source>
            <translation>Najpierw obejrzyj tu każdą stronę. Zapisze się jako plik, który przyjmie każda drukarka.</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>Na papierze</translation>
        </message>
    </context>
    <context>
        <name>ProblemScreen</name>
        <message>
            <source>Lidlark cannot go on yet</source>
            <translation>Lidlark nie może się uruchomić</translation>
        </message>
        <message>
            <source>Tried again just now: still the same.</source>
            <translation>Ponowna próba przed chwilą: bez zmian.</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Spróbuj znowu</translation>
        </message>
    </context>
    <context>
        <name>PutBackLines</name>
        <message>
            <source>%1 of %2. %3</source>
            <translation>%1 z %2. %3</translation>
        </message>
        <message>
            <source>Read these lines aloud</source>
            <translation>Przeczytaj te zdania na głos</translation>
        </message>
    </context>
    <context>
        <name>PutBackScreen</name>
        <message>
            <source>%1: %2 home</source>
            <translation>%1: na miejscu %2</translation>
        </message>
        <message>
            <source>All back in the box?</source>
            <translation>Wszystko wróciło do pudełka?</translation>
        </message>
        <message>
            <source>Another child's box</source>
            <translation>Pudełko innego dziecka</translation>
        </message>
        <message>
            <source>Back to the play</source>
            <translation>Wróć do zabawy</translation>
        </message>
        <message>
            <source>Clear up together</source>
            <translation>Sprzątamy razem</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Everything home</source>
            <translation>Wszystko na miejsce</translation>
        </message>
        <message>
            <source>Lid, last of all</source>
            <translation>Na samym końcu wieczko</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>Coś jest nie tak</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>Coś jest inaczej</translation>
        </message>
        <message>
            <source>Tap each one as it comes back.</source>
            <translation>Stuknij każdą rzecz, gdy wraca.</translation>
        </message>
        <message>
            <source>The lid is on</source>
            <translation>Wieczko na miejscu</translation>
        </message>
        <message>
            <source>Yes, all back</source>
            <translation>Tak, wszystko</translation>
        </message>
    </context>
    <context>
        <name>QuietPicture</name>
        <message>
            <source>%1. Tap for the words.</source>
            <translation>%1. Stuknij, a zobaczysz słowa.</translation>
        </message>
    </context>
    <context>
        <name>RecallScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Look for it</source>
            <translation>Szukaj</translation>
        </message>
        <message>
            <source>Lot, as it is printed</source>
            <translation>Seria, jak wydrukowano</translation>
        </message>
        <message>
            <source>Recall a lot</source>
            <translation>Wycofaj serię</translation>
        </message>
    </context>
    <context>
        <name>ReminderSettings</name>
        <message>
            <source>A quarter of an hour earlier</source>
            <translation>Kwadrans wcześniej</translation>
        </message>
        <message>
            <source>A quarter of an hour later</source>
            <translation>Kwadrans później</translation>
        </message>
        <message>
            <source>After bath</source>
            <translation>Po kąpieli</translation>
        </message>
        <message>
            <source>After school</source>
            <translation>Po szkole</translation>
        </message>
        <message>
            <source>After tea</source>
            <translation>Po kolacji</translation>
        </message>
        <message>
            <source>All that the locked screen says</source>
            <translation>Tylko to pokazuje zablokowany ekran</translation>
        </message>
        <message>
            <source>At about</source>
            <translation>Około godziny</translation>
        </message>
        <message>
            <source>Before bed</source>
            <translation>Przed snem</translation>
        </message>
        <message>
            <source>One quiet reminder a day</source>
            <translation>Jedno ciche przypomnienie dziennie</translation>
        </message>
        <message>
            <source>Our own words</source>
            <translation>Własne słowa</translation>
        </message>
        <message>
            <source>This phone has nothing to show a reminder with. It stays silent.</source>
            <translation>Ten telefon nie ma czym pokazać przypomnienia. Nie odezwie się.</translation>
        </message>
        <message>
            <source>Without a sound, and not on a day when somebody has played.</source>
            <translation>Bez dźwięku i nie w dniu, w którym była już zabawa.</translation>
        </message>
    </context>
    <context>
        <name>RemoveScreen</name>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>From now on nothing new reaches that phone. What is on it already cannot be fetched back.</source>
            <translation>Odtąd nic nowego nie dociera na tamten telefon. Tego, co już na nim jest, nie da się odebrać.</translation>
        </message>
        <message>
            <source>Keep in the crew</source>
            <translation>Zostaw w załodze</translation>
        </message>
        <message>
            <source>Leave now</source>
            <translation>Wyjdź teraz</translation>
        </message>
        <message>
            <source>Leave the crew</source>
            <translation>Opuść załogę</translation>
        </message>
        <message>
            <source>Stay in</source>
            <translation>Zostań</translation>
        </message>
        <message>
            <source>Take out now</source>
            <translation>Wyłącz teraz</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>Wyłącz z załogi: %1</translation>
        </message>
        <message>
            <source>To come back takes a new code.</source>
            <translation>Powrót wymaga nowego kodu.</translation>
        </message>
        <message>
            <source>What %1 noted stays, under that name.</source>
            <translation>Zapisy pod imieniem %1 zostają.</translation>
        </message>
        <message>
            <source>What is on this phone stays on it. From now on nothing new comes or goes.</source>
            <translation>To, co jest na tym telefonie, zostaje. Odtąd nic nowego nie przychodzi ani nie wychodzi.</translation>
        </message>
        <message>
            <source>What you noted stays with the crew, under your name.</source>
            <translation>Twoje zapisy zostają u załogi, pod twoim imieniem.</translation>
        </message>
    </context>
    <context>
        <name>ReportScreen</name>
        <message numerus="yes">
            <source>%n boxes left out: what lies in it has no price here, or one in other money.</source>
            <translation>
                <numerusform>Pominięto %n pudełko: brak tu ceny tego, co w nim leży, albo jest w innej walucie.</numerusform>
                <numerusform>Pominięto %n pudełka: brak tu ceny tego, co w nich leży, albo jest w innej walucie.</numerusform>
                <numerusform>Pominięto %n pudełek: brak tu ceny tego, co w nich leży, albo jest w innej walucie.</numerusform>
            </translation>
        </message>
        <message>
            <source>About %1 of material for each activity that was played</source>
            <translation>Około %1 materiału na każdą zabawę</translation>
        </message>
        <message numerus="yes">
            <source>All that lies in %n boxes, over the plays shared with you.</source>
            <translation>
                <numerusform>Wszystko, co leży w %n pudełku, przez zabawy, którymi się z tobą podzielono.</numerusform>
                <numerusform>Wszystko, co leży w %n pudełkach, przez zabawy, którymi się z tobą podzielono.</numerusform>
                <numerusform>Wszystko, co leży w %n pudełkach, przez zabawy, którymi się z tobą podzielono.</numerusform>
            </translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>Wróć do warsztatu</translation>
        </message>
        <message>
            <source>For a report</source>
            <translation>Do sprawozdania</translation>
        </message>
        <message>
            <source>It counts only plays that families chose to share, and says nothing of whether anybody was helped.</source>
            <translation>Liczy tylko zabawy, którymi rodziny chciały się podzielić, i nie mówi, czy komuś pomogły.</translation>
        </message>
        <message>
            <source>What one play costs is told from ten boxes on: fewer would tell something of one family.</source>
            <translation>Koszt jednej zabawy podajemy od dziesięciu pudełek: mniej mówiłoby coś o jednej rodzinie.</translation>
        </message>
    </context>
    <context>
        <name>RequestCard</name>
        <message>
            <source>Ask for it</source>
            <translation>Poproś o to</translation>
        </message>
        <message>
            <source>Ask for more</source>
            <translation>Poproś o więcej</translation>
        </message>
        <message>
            <source>How many came?</source>
            <translation>Ile przyszło?</translation>
        </message>
        <message>
            <source>It has come: count it in</source>
            <translation>Przyszło: dolicz to</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>Jedno mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>Jedno więcej: %1</translation>
        </message>
        <message>
            <source>Put it in the box</source>
            <translation>Włóż do pudełka</translation>
        </message>
    </context>
    <context>
        <name>RequestCards</name>
        <message>
            <source>More of it</source>
            <translation>Więcej tego</translation>
        </message>
    </context>
    <context>
        <name>RequestsScreen</name>
        <message>
            <source>Back to the box</source>
            <translation>Wróć do pudełka</translation>
        </message>
        <message>
            <source>Nothing asked for, nothing low</source>
            <translation>Brak próśb, wszystkiego jest dosyć</translation>
        </message>
        <message>
            <source>Tap an item in the box to ask for more of it.</source>
            <translation>Stuknij rzecz w pudełku, żeby poprosić o więcej.</translation>
        </message>
        <message>
            <source>What is asked for</source>
            <translation>O co jest prośba</translation>
        </message>
        <message>
            <source>What to ask for</source>
            <translation>O co poprosić</translation>
        </message>
    </context>
    <context>
        <name>ResumeScreen</name>
        <message>
            <source>All back in the box?</source>
            <translation>Wszystko wróciło do pudełka?</translation>
        </message>
        <message>
            <source>Go on playing</source>
            <translation>Bawcie się dalej</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>Coś jest inaczej</translation>
        </message>
        <message>
            <source>We stopped early</source>
            <translation>Już skończone</translation>
        </message>
        <message>
            <source>Yes, all back</source>
            <translation>Tak, wszystko</translation>
        </message>
        <message>
            <source>You were playing %1</source>
            <translation>Przerwana zabawa: %1</translation>
        </message>
    </context>
    <context>
        <name>ReviewChoice</name>
        <message>
            <source>A week earlier</source>
            <translation>Tydzień wcześniej</translation>
        </message>
        <message>
            <source>A week later</source>
            <translation>Tydzień później</translation>
        </message>
        <message>
            <source>In %1 weeks</source>
            <translation>Za %1 tygodni</translation>
        </message>
        <message>
            <source>We look at it again on %1</source>
            <translation>Wracamy do tego: %1</translation>
        </message>
        <message>
            <source>When do we look at it again?</source>
            <translation>Kiedy znów na to spojrzymy?</translation>
        </message>
    </context>
    <context>
        <name>ReviseRow</name>
        <message>
            <source>Leave out</source>
            <translation>Usuń z listy</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>O jeden mniej: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>O jeden więcej: %1</translation>
        </message>
        <message>
            <source>Put in instead: %1</source>
            <translation>Włóż zamiast tego: %1</translation>
        </message>
    </context>
    <context>
        <name>ReviseScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>Wróć, nic się nie zmienia</translation>
        </message>
        <message>
            <source>Change %1's box</source>
            <translation>Zmiana pudełka: %1</translation>
        </message>
        <message>
            <source>Close the catalogue</source>
            <translation>Zamknij katalog</translation>
        </message>
        <message>
            <source>Put something in</source>
            <translation>Włóż coś</translation>
        </message>
        <message>
            <source>Send as revision %1</source>
            <translation>Wyślij jako wersję %1</translation>
        </message>
        <message>
            <source>The list is as it was</source>
            <translation>Lista jest taka jak była</translation>
        </message>
        <message>
            <source>What this does</source>
            <translation>Co to zmieni</translation>
        </message>
        <message>
            <source>Why, in words the family reads</source>
            <translation>Dlaczego, słowami, które przeczyta rodzina</translation>
        </message>
    </context>
    <context>
        <name>RoomAdult</name>
        <message>
            <source>A child under three is here.</source>
            <translation>Jest tu dziecko poniżej trzech lat.</translation>
        </message>
        <message>
            <source>How close can you stay?</source>
            <translation>Jak blisko możesz być?</translation>
        </message>
        <message>
            <source>How loud may it be?</source>
            <translation>Jak głośno może być?</translation>
        </message>
        <message>
            <source>I stay right beside the water</source>
            <translation>Jestem cały czas tuż przy wodzie</translation>
        </message>
        <message>
            <source>In the same room</source>
            <translation>W tym samym pokoju</translation>
        </message>
        <message>
            <source>Quiet now</source>
            <translation>Teraz cicho</translation>
        </message>
        <message>
            <source>Right beside</source>
            <translation>Tuż obok</translation>
        </message>
        <message>
            <source>Somebody sleeps, or noise is too much.</source>
            <translation>Ktoś śpi albo hałasu jest za dużo.</translation>
        </message>
        <message>
            <source>Within arm's reach</source>
            <translation>Na wyciągnięcie ręki</translation>
        </message>
    </context>
    <context>
        <name>RoomScreen</name>
        <message>
            <source>Back to today</source>
            <translation>Wróć do „Dziś”</translation>
        </message>
        <message>
            <source>Here with %1. Tap whoever comes or goes.</source>
            <translation>Teraz w pokoju: %1. Stuknij osobę, która przychodzi albo wychodzi.</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>Karta domu</translation>
        </message>
        <message>
            <source>Nobody else</source>
            <translation>Poza tym nikt</translation>
        </message>
        <message>
            <source>Nobody has said yet, so everyone at home counts as here.</source>
            <translation>Nikt jeszcze nie powiedział, więc przyjmujemy, że są tu wszyscy z domu.</translation>
        </message>
        <message>
            <source>That's who is here</source>
            <translation>Zgadza się</translation>
        </message>
        <message>
            <source>Who is here?</source>
            <translation>Kto tu jest?</translation>
        </message>
    </context>
    <context>
        <name>RoomVisitors</name>
        <message>
            <source>A guest under three</source>
            <translation>Gość poniżej trzech lat</translation>
        </message>
        <message>
            <source>A guest who puts things in the mouth</source>
            <translation>Gość, który bierze rzeczy do buzi</translation>
        </message>
        <message>
            <source>A guest?</source>
            <translation>Gość?</translation>
        </message>
    </context>
    <context>
        <name>RoundScreen</name>
        <message>
            <source>%1: packed</source>
            <translation>%1: spakowane</translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>Wróć do warsztatu</translation>
        </message>
        <message>
            <source>By post</source>
            <translation>Pocztą</translation>
        </message>
        <message>
            <source>How it gets there</source>
            <translation>Jak to dotrze</translation>
        </message>
        <message>
            <source>I have it with me</source>
            <translation>Mam to ze sobą</translation>
        </message>
        <message>
            <source>It is posted</source>
            <translation>Wysłane pocztą</translation>
        </message>
        <message>
            <source>Nothing to pack</source>
            <translation>Nic do spakowania</translation>
        </message>
        <message>
            <source>On a visit</source>
            <translation>Podczas wizyty</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>Runda uzupełnień</translation>
        </message>
        <message>
            <source>What families ask for stands here, item by item.</source>
            <translation>Tu stoi, o co proszą rodziny, rzecz po rzeczy.</translation>
        </message>
    </context>
    <context>
        <name>SafetyWords</name>
        <message>
            <source>A small piece may lie on the floor. Look now.</source>
            <translation>Na podłodze może leżeć mała część. Szukaj teraz.</translation>
        </message>
        <message>
            <source>Anyone who lives here counts, not only your child.</source>
            <translation>Liczy się każdy, kto tu mieszka, nie tylko twoje dziecko.</translation>
        </message>
        <message>
            <source>Balloons, rubber bands, many soft balls.</source>
            <translation>Balony, gumki recepturki, wiele miękkich piłek.</translation>
        </message>
        <message>
            <source>Bought dough is mostly wheat.</source>
            <translation>Kupiona ciastolina to przeważnie pszenica.</translation>
        </message>
        <message>
            <source>Bought dough is mostly wheat. A wheat allergy counts as yes, and so does coeliac disease.</source>
            <translation>Kupiona ciastolina to przeważnie pszenica. Alergia na pszenicę liczy się jako „tak”, celiakia też.</translation>
        </message>
        <message>
            <source>Does %1 like firm touch?</source>
            <translation>Czy %1 lubi mocny dotyk?</translation>
        </message>
        <message>
            <source>Does %1 put things in the mouth?</source>
            <translation>Czy %1 bierze rzeczy do buzi?</translation>
        </message>
        <message>
            <source>Does anyone here have coeliac disease?</source>
            <translation>Czy ktoś tu ma celiakię?</translation>
        </message>
        <message>
            <source>Has anyone here spina bifida, had many operations, or reacted to banana, avocado, kiwi or chestnut?</source>
            <translation>Czy ktoś tu ma rozszczep kręgosłupa, wiele operacji za sobą albo reakcję na banana, awokado, kiwi lub kasztany?</translation>
        </message>
        <message>
            <source>In a mouth: wash it before the next play.</source>
            <translation>W buzi: umyj to przed następną zabawą.</translation>
        </message>
        <message>
            <source>Is anyone here allergic to wheat?</source>
            <translation>Czy ktoś tu ma alergię na pszenicę?</translation>
        </message>
        <message>
            <source>Is there a dog or a cat?</source>
            <translation>Czy jest tu pies albo kot?</translation>
        </message>
        <message>
            <source>Is there a high place for the box?</source>
            <translation>Czy jest wysokie miejsce na pudełko?</translation>
        </message>
        <message>
            <source>It is in balloons, rubber bands and many soft balls. Spina bifida counts as yes, and so do many operations.</source>
            <translation>Jest w balonach, gumkach recepturkach i wielu miękkich piłkach. Rozszczep kręgosłupa liczy się jako „tak”, wiele operacji też.</translation>
        </message>
        <message>
            <source>Keep them from small children. A piece of balloon can block a throat.</source>
            <translation>Trzymaj je z dala od małych dzieci. Kawałek balonu może zatkać gardło.</translation>
        </message>
        <message>
            <source>Look for the lost piece now</source>
            <translation>Szukaj teraz zgubionej części</translation>
        </message>
        <message>
            <source>May have swallowed it, or is choking</source>
            <translation>Połknięte albo się dławi</translation>
        </message>
        <message>
            <source>Must anyone avoid latex?</source>
            <translation>Czy ktoś musi unikać lateksu?</translation>
        </message>
        <message>
            <source>Must anyone avoid wheat?</source>
            <translation>Czy ktoś musi unikać pszenicy?</translation>
        </message>
        <message>
            <source>Must anyone here avoid latex?</source>
            <translation>Czy ktoś tu musi unikać lateksu?</translation>
        </message>
        <message>
            <source>New or unusual drowsiness, a change after a knock to the head, a seizure, trouble breathing, or pain that stops play: get medical help.</source>
            <translation>Nowa lub niezwykła senność, zmiana po uderzeniu w głowę, napad padaczkowy lub drgawki, trudności z oddychaniem albo ból, który przerywa zabawę: zwróć się po pomoc medyczną.</translation>
        </message>
        <message>
            <source>Not a medical device. It does not test, treat or diagnose, and it does not watch your child for you. Follow your local rules and your therapist.</source>
            <translation>To nie jest wyrób medyczny. Nie bada, nie leczy, nie stawia diagnozy i nie pilnuje dziecka za ciebie. Trzymaj się miejscowych zasad i wskazówek swojego terapeuty.</translation>
        </message>
        <message>
            <source>Not a medical device. Measures and warnings help you to decide, and decide nothing for you: your profession's rules and those of your place come first.</source>
            <translation>To nie jest wyrób medyczny. Wymiary i ostrzeżenia pomagają Ci decydować, ale o niczym nie decydują: najpierw są zasady Twojego zawodu i Twojego miejsca.</translation>
        </message>
        <message>
            <source>Not said counts as no.</source>
            <translation>Brak odpowiedzi liczy się jako „nie”.</translation>
        </message>
        <message>
            <source>Not said counts as yes under three.</source>
            <translation>Poniżej trzech lat brak odpowiedzi liczy się jako „tak”.</translation>
        </message>
        <message>
            <source>Out of reach of small children.</source>
            <translation>Poza zasięgiem małych dzieci.</translation>
        </message>
        <message>
            <source>Past its date. Throw it away.</source>
            <translation>Po terminie. Wyrzuć.</translation>
        </message>
        <message>
            <source>Pick up every piece now.</source>
            <translation>Podnieś teraz każdy kawałek.</translation>
        </message>
        <message>
            <source>Salty dough can poison them.</source>
            <translation>Słona ciastolina może je zatruć.</translation>
        </message>
        <message>
            <source>Some things must leave the house. See which.</source>
            <translation>Niektóre rzeczy trzeba wynieść z domu. Zobacz, które.</translation>
        </message>
        <message>
            <source>Then latex is avoided too. Talk to a clinician about it.</source>
            <translation>Wtedy unika się też lateksu. Porozmawiaj o tym ze specjalistą medycznym.</translation>
        </message>
    </context>
    <context>
        <name>SeesScreen</name>
        <message>
            <source>A parent in another home sees the box and the goals, and their own home's plays, kites and home sheet.</source>
            <translation>Rodzic w innym domu widzi pudełko i cele oraz zabawy, latawce i kartę własnego domu.</translation>
        </message>
        <message>
            <source>As they stand on the day of the invitation, and on until its end.</source>
            <translation>Tak, jak jest w dniu zaproszenia, i dalej aż do jego końca.</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Does not see: anything that is written in it.</source>
            <translation>Nie widzi: niczego, co jest w tym napisane.</translation>
        </message>
        <message>
            <source>Does not see: goals, notes of others.</source>
            <translation>Nie widzi: cele, notatki innych.</translation>
        </message>
        <message>
            <source>Does not see: kites, notes of others.</source>
            <translation>Nie widzi: latawce, notatki innych.</translation>
        </message>
        <message>
            <source>Does not see: notes of others.</source>
            <translation>Nie widzi: notatki innych.</translation>
        </message>
        <message>
            <source>Does not see: plays of others, kites, goals, notes of others.</source>
            <translation>Nie widzi: zabawy innych, latawce, cele, notatki innych.</translation>
        </message>
        <message>
            <source>Family or carer</source>
            <translation>Rodzina lub opiekun</translation>
        </message>
        <message>
            <source>Guest for a few days</source>
            <translation>Gość na kilka dni</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>Rodzic</translation>
        </message>
        <message>
            <source>Sees plays only of a home that shares them.</source>
            <translation>Zabawy widzi tylko z domu, który się nimi dzieli.</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, goals.</source>
            <translation>Widzi: pudełko i liczby, karta domu, cele.</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, own plays.</source>
            <translation>Widzi: pudełko i liczby, karta domu, własne zabawy.</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, plays, kites, goals.</source>
            <translation>Widzi: pudełko i liczby, karta domu, zabawy, latawce, cele.</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, plays, kites.</source>
            <translation>Widzi: pudełko i liczby, karta domu, zabawy, latawce.</translation>
        </message>
        <message>
            <source>Sees: that something is there, how large it is, and when it came.</source>
            <translation>Widzi: że coś tam jest, jakie jest duże i kiedy przyszło.</translation>
        </message>
        <message>
            <source>The place where it lies</source>
            <translation>Miejsce, gdzie to leży</translation>
        </message>
        <message>
            <source>Therapist</source>
            <translation>Terapeuta</translation>
        </message>
        <message>
            <source>What each can see</source>
            <translation>Co kto widzi</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: not on their lid list</source>
            <translation>%1: nie ma na liście w wieczku</translation>
        </message>
        <message>
            <source>%1: still on its way</source>
            <translation>%1: jeszcze w drodze</translation>
        </message>
        <message>
            <source>%1: to be taken out</source>
            <translation>%1: do wyjęcia</translation>
        </message>
        <message>
            <source>Camera on the hands</source>
            <translation>Kamera na ręce</translation>
        </message>
        <message>
            <source>Camera on the whole body</source>
            <translation>Kamera na całą postać</translation>
        </message>
        <message>
            <source>The work</source>
            <translation>Główna część</translation>
        </message>
        <message>
            <source>To arrive</source>
            <translation>Na początek</translation>
        </message>
        <message>
            <source>To part</source>
            <translation>Na koniec</translation>
        </message>
        <message>
            <source>it is nothing for a camera</source>
            <translation>nie nadaje się przed kamerę</translation>
        </message>
        <message>
            <source>not offered in this home now</source>
            <translation>teraz nie dla tego domu</translation>
        </message>
    </context>
    <context>
        <name>SettingsScreen</name>
        <message>
            <source>%1 works with the left hand</source>
            <translation>%1 pracuje lewą ręką</translation>
        </message>
        <message>
            <source>A reminder</source>
            <translation>Przypomnienie</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Count the pieces aloud</source>
            <translation>Licz rzeczy na głos</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Ciemno</translation>
        </message>
        <message>
            <source>Dark, and nothing moves. With less than 15 % left nothing moves anyway.</source>
            <translation>Ciemno i nic się nie rusza. Gdy zostaje mniej niż 15 %, i tak nic się nie rusza.</translation>
        </message>
        <message>
            <source>Hand and motion</source>
            <translation>Ręka i ruch</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>Mocny kontrast</translation>
        </message>
        <message>
            <source>I hold the phone in my left hand</source>
            <translation>Trzymam telefon w lewej ręce</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>Większe</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Jasno</translation>
        </message>
        <message>
            <source>Nothing moves</source>
            <translation>Nic się nie rusza</translation>
        </message>
        <message>
            <source>Off, it is nowhere to be seen.</source>
            <translation>Gdy wyłączysz, nigdzie go nie będzie widać.</translation>
        </message>
        <message>
            <source>Offer the kite before play</source>
            <translation>Proponuj latawiec przed zabawą</translation>
        </message>
        <message>
            <source>One, two, three, as each comes home.</source>
            <translation>Jeden, dwa, trzy, gdy każda rzecz wraca.</translation>
        </message>
        <message>
            <source>Ordinary</source>
            <translation>Zwykłe</translation>
        </message>
        <message>
            <source>Putting back</source>
            <translation>Odkładanie</translation>
        </message>
        <message>
            <source>Save the battery</source>
            <translation>Oszczędzaj baterię</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ustawienia</translation>
        </message>
        <message>
            <source>Text size</source>
            <translation>Wielkość tekstu</translation>
        </message>
        <message>
            <source>The activities</source>
            <translation>Zabawy</translation>
        </message>
        <message>
            <source>The kite</source>
            <translation>Latawiec</translation>
        </message>
        <message>
            <source>The pictures change hands, where they can.</source>
            <translation>Obrazki zmieniają rękę, gdzie się da.</translation>
        </message>
        <message>
            <source>Twice as large</source>
            <translation>Dwa razy większe</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Słowa</translation>
        </message>
    </context>
    <context>
        <name>ShareChoice</name>
        <message>
            <source>It starts with the next play, and you can say no on any day. Then nothing more goes, and what went is taken back. What %1 has read or printed by then stays there.</source>
            <translation>Zaczyna się od następnej zabawy, a każdego dnia można powiedzieć nie. Wtedy nic więcej nie wychodzi, a to, co wyszło, jest cofane. Co do tej pory przeczytano lub wydrukowano (%1), tam zostaje.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nie</translation>
        </message>
        <message>
            <source>Share what you play with %1?</source>
            <translation>Czy dzielić się zabawami? Widzi je wtedy: %1.</translation>
        </message>
        <message>
            <source>What goes: the names of activities, the day and the part of the day, and what you noticed. Also which phone of yours it came from.</source>
            <translation>Co wychodzi: nazwy zabaw, dzień i pora dnia oraz to, co zauważono. Także to, z którego z waszych telefonów przyszło.</translation>
        </message>
        <message>
            <source>What never goes: kites, notes, what was not played or was stopped early, and how often you open the app.</source>
            <translation>Co nigdy nie wychodzi: latawce, notatki, to, czego nie było albo co przerwano, i jak często otwieracie aplikację.</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Tak</translation>
        </message>
    </context>
    <context>
        <name>SharedPlaceRoute</name>
        <message>
            <source>Back to letting in</source>
            <translation>Wróć do wpuszczania</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
    </context>
    <context>
        <name>SharedPlaceScreen</name>
        <message>
            <source>An address first.</source>
            <translation>Najpierw adres.</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Forget this place</source>
            <translation>Zapomnij to miejsce</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>Udostępniaj</translation>
        </message>
        <message>
            <source>Share in this way?</source>
            <translation>Udostępniać w ten sposób?</translation>
        </message>
        <message>
            <source>Shared place</source>
            <translation>Wspólne miejsce</translation>
        </message>
        <message>
            <source>Stop sharing</source>
            <translation>Przestań udostępniać</translation>
        </message>
        <message>
            <source>Try it out</source>
            <translation>Wypróbuj</translation>
        </message>
        <message>
            <source>Trying it out.</source>
            <translation>Trwa próba.</translation>
        </message>
    </context>
    <context>
        <name>ShelfScreen</name>
        <message>
            <source>Add a thing</source>
            <translation>Dodaj rzecz</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Find by name, shop or lot</source>
            <translation>Szukaj po nazwie, sklepie lub serii</translation>
        </message>
        <message>
            <source>Measured by you, so that they may be played with</source>
            <translation>Zmierzone przez ciebie, więc można się nimi bawić</translation>
        </message>
        <message>
            <source>No price</source>
            <translation>Bez ceny</translation>
        </message>
        <message>
            <source>None left</source>
            <translation>Nic nie zostało</translation>
        </message>
        <message>
            <source>Nothing on the shelf is like that</source>
            <translation>Nie ma takiej rzeczy na półce</translation>
        </message>
        <message>
            <source>Shelf and shops</source>
            <translation>Półka i sklepy</translation>
        </message>
        <message>
            <source>Take out a word or a peg to see more.</source>
            <translation>Usuń słowo lub klamerkę, aby zobaczyć więcej.</translation>
        </message>
        <message>
            <source>Things of your own</source>
            <translation>Twoje własne rzeczy</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>Zużywa się w zabawie</translation>
        </message>
    </context>
    <context>
        <name>ShelfWords</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 za %2</translation>
        </message>
        <message>
            <source>%1 in a pack, no price yet</source>
            <translation>%1 w opakowaniu, jeszcze bez ceny</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces</source>
            <translation>
                <numerusform>%n sztuka</numerusform>
                <numerusform>%n sztuki</numerusform>
                <numerusform>%n sztuk</numerusform>
            </translation>
        </message>
        <message>
            <source>None left</source>
            <translation>Nic nie zostało</translation>
        </message>
    </context>
    <context>
        <name>SkillChoice</name>
        <message>
            <source>What practises it</source>
            <translation>Co to ćwiczy</translation>
        </message>
        <message>
            <source>What practises it (%1 chosen)</source>
            <translation>Co to ćwiczy (wybrane: %1)</translation>
        </message>
        <message>
            <source>What practises it: the offers go by this</source>
            <translation>Co to ćwiczy: od tego zależą propozycje</translation>
        </message>
    </context>
    <context>
        <name>SomebodyKnocks</name>
        <message>
            <source>Do both phones show these three words?</source>
            <translation>Czy oba telefony pokazują te trzy słowa?</translation>
        </message>
        <message>
            <source>Not this phone</source>
            <translation>Nie ten telefon</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>Chwileczkę.</translation>
        </message>
        <message>
            <source>Somebody is here: %1</source>
            <translation>Ktoś tu jest: %1</translation>
        </message>
        <message>
            <source>Yes, let %1 in</source>
            <translation>Tak, wpuść: %1</translation>
        </message>
        <message>
            <source>Yes, let in</source>
            <translation>Tak, wpuść</translation>
        </message>
    </context>
    <context>
        <name>StepPage</name>
        <message>
            <source>Read this step aloud</source>
            <translation>Przeczytaj ten krok na głos</translation>
        </message>
        <message>
            <source>Step %1 of %2</source>
            <translation>Krok %1 z %2</translation>
        </message>
    </context>
    <context>
        <name>SupplyScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Back, nothing is changed</source>
            <translation>Wróć, nic się nie zmienia</translation>
        </message>
        <message>
            <source>Change its sizes and materials</source>
            <translation>Zmień wymiary i materiały</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Zachowaj</translation>
        </message>
        <message>
            <source>Keep what you have written first.</source>
            <translation>Najpierw zachowaj to, co napisano.</translation>
        </message>
        <message>
            <source>Lot %1</source>
            <translation>Seria %1</translation>
        </message>
        <message>
            <source>Nothing is changed yet</source>
            <translation>Nic jeszcze nie zmieniono</translation>
        </message>
        <message>
            <source>Say what you measured, and see whose box it changes.</source>
            <translation>Podaj, co zmierzono, i zobacz, czyje pudełko to zmienia.</translation>
        </message>
        <message>
            <source>Which boxes hold this lot</source>
            <translation>W których pudełkach jest ta seria</translation>
        </message>
        <message>
            <source>Yours measures otherwise</source>
            <translation>Twoja ma inne wymiary</translation>
        </message>
    </context>
    <context>
        <name>SwitchRing</name>
        <message>
            <source>Out of here</source>
            <translation>Wyjdź stąd</translation>
        </message>
    </context>
    <context>
        <name>SwitchSettings</name>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>Everything takes its turn in a ring. Any key, or a touch anywhere, presses what is in it.</source>
            <translation>Ramka obejmuje wszystko po kolei. Dowolny klawisz albo dotyk w dowolnym miejscu naciska to, co jest w ramce.</translation>
        </message>
        <message>
            <source>How long the ring stays</source>
            <translation>Jak długo ramka zostaje</translation>
        </message>
        <message>
            <source>No switch</source>
            <translation>Bez przełącznika</translation>
        </message>
        <message>
            <source>One key moves the ring on. Space or Enter presses what is in it.</source>
            <translation>Jeden klawisz przesuwa ramkę. Spacja lub Enter naciska to, co jest w ramce.</translation>
        </message>
        <message>
            <source>One switch</source>
            <translation>Jeden przełącznik</translation>
        </message>
        <message>
            <source>Switches</source>
            <translation>Przełączniki</translation>
        </message>
        <message>
            <source>The ring moves on sooner</source>
            <translation>Ramka przesuwa się wcześniej</translation>
        </message>
        <message>
            <source>The ring stays longer</source>
            <translation>Ramka zostaje dłużej</translation>
        </message>
        <message>
            <source>Two switches</source>
            <translation>Dwa przełączniki</translation>
        </message>
    </context>
    <context>
        <name>TakeOff</name>
        <message>
            <source>%1: box, plays and home sheet leave this phone. Until Lidlark is closed they can be brought back.</source>
            <translation>%1: pudełko, zabawy i karta domu znikną z tego telefonu. Do zamknięcia Lidlark można je przywrócić.</translation>
        </message>
        <message>
            <source>Box, plays and home sheet.</source>
            <translation>Pudełko, zabawy i karta domu.</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Zachowaj</translation>
        </message>
        <message>
            <source>Take off</source>
            <translation>Usuń</translation>
        </message>
        <message>
            <source>Take off this phone: %1</source>
            <translation>Usuń z tego telefonu: %1</translation>
        </message>
    </context>
    <context>
        <name>TakeOutRow</name>
        <message>
            <source>Taken out</source>
            <translation>Wyniesione</translation>
        </message>
    </context>
    <context>
        <name>TakeOutScreen</name>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Look round the house too</source>
            <translation>Rozejrzyj się też po domu</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>Coś jest nie tak</translation>
        </message>
        <message>
            <source>Take out of the house</source>
            <translation>Wynieś z domu</translation>
        </message>
        <message>
            <source>The rest later</source>
            <translation>Reszta później</translation>
        </message>
    </context>
    <context>
        <name>TendScreen</name>
        <message>
            <source>All clean. It can be packed for another child.</source>
            <translation>Wszystko czyste. Można pakować dla innego dziecka.</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wróć</translation>
        </message>
        <message>
            <source>Boxes that came back</source>
            <translation>Pudełka, które wróciły</translation>
        </message>
        <message>
            <source>It came back</source>
            <translation>Wróciło</translation>
        </message>
        <message>
            <source>Lot of the new one, if it has one</source>
            <translation>Seria nowej rzeczy, jeśli jest</translation>
        </message>
        <message>
            <source>No box has been handed over</source>
            <translation>Żadnego pudełka jeszcze nie przekazano</translation>
        </message>
        <message>
            <source>Not yet, after all</source>
            <translation>Jednak jeszcze nie</translation>
        </message>
        <message>
            <source>Once one has, it stands here until it is used no more.</source>
            <translation>Gdy jakieś przekażesz, będzie tu, dopóki jest używane.</translation>
        </message>
        <message>
            <source>Replaced by a new one</source>
            <translation>Wymienione na nowe</translation>
        </message>
        <message>
            <source>Soap and water</source>
            <translation>Woda z mydłem</translation>
        </message>
        <message>
            <source>Use this box no more</source>
            <translation>Nie używaj już tego pudełka</translation>
        </message>
        <message>
            <source>Washing machine</source>
            <translation>Pralka</translation>
        </message>
        <message>
            <source>Wiped</source>
            <translation>Przetarte</translation>
        </message>
    </context>
    <context>
        <name>ThingsToPutIn</name>
        <message>
            <source>Close the list of things</source>
            <translation>Zamknij listę rzeczy</translation>
        </message>
        <message>
            <source>Put in: %1</source>
            <translation>Włóż: %1</translation>
        </message>
        <message>
            <source>Put something in</source>
            <translation>Włóż coś</translation>
        </message>
    </context>
    <context>
        <name>TodayHead</name>
        <message>
            <source>In the room: %1</source>
            <translation>W pokoju: %1</translation>
        </message>
        <message>
            <source>Play with %1</source>
            <translation>Zabawa: %1</translation>
        </message>
        <message>
            <source>Who is here? Perhaps %1</source>
            <translation>Kto tu jest? Może %1</translation>
        </message>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>i jeszcze %n</numerusform>
                <numerusform>i jeszcze %n</numerusform>
                <numerusform>i jeszcze %n</numerusform>
            </translation>
        </message>
        <message>
            <source>in the room</source>
            <translation>w pokoju</translation>
        </message>
        <message>
            <source>who is here?</source>
            <translation>kto tu jest?</translation>
        </message>
    </context>
    <context>
        <name>TodayNotes</name>
        <message>
            <source>Box: %1</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>Said by %1. Tap when it is here.</source>
            <translation>Mówi %1. Stuknij, gdy już jest.</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Spróbuj znowu</translation>
        </message>
    </context>
    <context>
        <name>TodayScreen</name>
        <message>
            <source>%1 chooses</source>
            <translation>%1 wybiera</translation>
        </message>
        <message>
            <source>Anything at all</source>
            <translation>Cokolwiek</translation>
        </message>
        <message>
            <source>Everything</source>
            <translation>Wszystko</translation>
        </message>
        <message>
            <source>Kept for today: %1</source>
            <translation>Zachowane na dziś: %1</translation>
        </message>
        <message>
            <source>Minutes: out %1. play %2. back %3</source>
            <translation>Minuty: przed zabawą %1, zabawa %2, po zabawie %3</translation>
        </message>
        <message>
            <source>The week ahead</source>
            <translation>Najbliższy tydzień</translation>
        </message>
        <message>
            <source>Three others</source>
            <translation>Trzy inne</translation>
        </message>
        <message>
            <source>Video session: have ready</source>
            <translation>Sesja wideo: przygotuj</translation>
        </message>
        <message>
            <source>back %1</source>
            <translation>po %1</translation>
        </message>
        <message>
            <source>out %1</source>
            <translation>przed %1</translation>
        </message>
        <message>
            <source>play %1</source>
            <translation>zabawa %1</translation>
        </message>
    </context>
    <context>
        <name>TogetherScreen</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 z %2</translation>
        </message>
        <message>
            <source>And then?</source>
            <translation>A potem?</translation>
        </message>
        <message>
            <source>Choose something</source>
            <translation>Wybierz coś</translation>
        </message>
        <message>
            <source>For you, before you play</source>
            <translation>Dla ciebie, przed zabawą</translation>
        </message>
        <message>
            <source>Four kite breaths</source>
            <translation>Cztery oddechy latawca</translation>
        </message>
    </context>
    <context>
        <name>TypedCode</name>
        <message>
            <source>/home/ruth/Pictures/code.png</source>
            <translation>/home/ruth/Pictures/code.png</translation>
        </message>
        <message>
            <source>Read a picture of the squares</source>
            <translation>Odczytaj zdjęcie kratek</translation>
        </message>
        <message>
            <source>Read this picture</source>
            <translation>Odczytaj to zdjęcie</translation>
        </message>
        <message>
            <source>Small letters are enough, and so are the first four of each word.</source>
            <translation>Wystarczą małe litery i po cztery pierwsze z każdego słowa.</translation>
        </message>
        <message>
            <source>The nine words on the other phone</source>
            <translation>Dziewięć słów z drugiego telefonu</translation>
        </message>
        <message>
            <source>Where the picture lies on this phone</source>
            <translation>Gdzie leży zdjęcie na tym telefonie</translation>
        </message>
    </context>
    <context>
        <name>TypedSizes</name>
        <message>
            <source>Across, mm</source>
            <translation>Średnica, mm</translation>
        </message>
        <message>
            <source>High, mm</source>
            <translation>Wysokość, mm</translation>
        </message>
        <message>
            <source>Long, mm</source>
            <translation>Długość, mm</translation>
        </message>
        <message>
            <source>Millimetres: a number from 0.1 to 2000.</source>
            <translation>Milimetry: liczba od 0.1 do 2000.</translation>
        </message>
        <message>
            <source>Thick, mm</source>
            <translation>Grubość, mm</translation>
        </message>
        <message>
            <source>Thicker than it is wide: that is a rod.</source>
            <translation>Grubsze niż szersze: to walec.</translation>
        </message>
        <message>
            <source>Wide, mm</source>
            <translation>Szerokość, mm</translation>
        </message>
    </context>
    <context>
        <name>UncheckedNote</name>
        <message>
            <source>Put this away</source>
            <translation>Schowaj to</translation>
        </message>
    </context>
    <context>
        <name>VideoPlanScreen</name>
        <message>
            <source>A day earlier</source>
            <translation>Dzień wcześniej</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>Dzień później</translation>
        </message>
        <message>
            <source>A quarter of an hour earlier</source>
            <translation>Kwadrans wcześniej</translation>
        </message>
        <message>
            <source>A quarter of an hour later</source>
            <translation>Kwadrans później</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Call it off</source>
            <translation>Odwołaj</translation>
        </message>
        <message>
            <source>Call it off: %1</source>
            <translation>Odwołaj: %1</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Dzień</translation>
        </message>
        <message>
            <source>Nothing can be planned from this box now.</source>
            <translation>Z tego pudełka nie da się teraz nic zaplanować.</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>Otwórz</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Zaplanuj</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Godzina</translation>
        </message>
        <message>
            <source>Video session</source>
            <translation>Sesja wideo</translation>
        </message>
        <message>
            <source>in %1 days</source>
            <translation>za %1 dni</translation>
        </message>
        <message>
            <source>today</source>
            <translation>dzisiaj</translation>
        </message>
    </context>
    <context>
        <name>VideoSessionScreen</name>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Wstecz</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Gotowe</translation>
        </message>
        <message>
            <source>Easier: %1</source>
            <translation>Łatwiej: %1</translation>
        </message>
        <message>
            <source>Harder: %1</source>
            <translation>Trudniej: %1</translation>
        </message>
        <message>
            <source>No video session is planned.</source>
            <translation>Nie ma zaplanowanej sesji wideo.</translation>
        </message>
        <message>
            <source>Take out of your own box</source>
            <translation>Wyjmij ze swojego pudełka</translation>
        </message>
        <message>
            <source>The last five minutes: what did you see, and what is next?</source>
            <translation>Ostatnie pięć minut: co widać i co dalej?</translation>
        </message>
        <message>
            <source>The session</source>
            <translation>Sesja</translation>
        </message>
    </context>
    <context>
        <name>WaitingToBeLetIn</name>
        <message>
            <source>Stop waiting</source>
            <translation>Przestań czekać</translation>
        </message>
        <message>
            <source>The other phone asks whether both show these three words:</source>
            <translation>Drugi telefon pyta, czy na obu są te trzy słowa:</translation>
        </message>
        <message>
            <source>When it has said yes, this phone goes on by itself. You can put it down meanwhile.</source>
            <translation>Gdy tam padnie „tak”, ten telefon sam pójdzie dalej. Możesz go tymczasem odłożyć.</translation>
        </message>
    </context>
    <context>
        <name>WeekDayRow</name>
        <message>
            <source>Another one</source>
            <translation>Inna</translation>
        </message>
        <message>
            <source>Its choices are below.</source>
            <translation>Możliwości są poniżej.</translation>
        </message>
        <message>
            <source>Keep it here</source>
            <translation>Zachowaj ją tu</translation>
        </message>
        <message>
            <source>Kept. %1</source>
            <translation>Zachowane. %1</translation>
        </message>
        <message>
            <source>Leave it free</source>
            <translation>Zostaw wolne</translation>
        </message>
        <message>
            <source>Let the plan decide</source>
            <translation>Niech zdecyduje plan</translation>
        </message>
        <message>
            <source>Play it now</source>
            <translation>Bawcie się teraz</translation>
        </message>
    </context>
    <context>
        <name>WeekScreen</name>
        <message>
            <source>All of it is kept</source>
            <translation>Wszystko zachowane</translation>
        </message>
        <message>
            <source>Back to today</source>
            <translation>Wróć do „Dziś”</translation>
        </message>
        <message>
            <source>Keep this week</source>
            <translation>Zachowaj ten tydzień</translation>
        </message>
        <message>
            <source>One small thing a day, if it suits. Tap a day to change it. Nothing here is owed.</source>
            <translation>Jedna mała rzecz dziennie, jeśli pasuje. Stuknij dzień, żeby go zmienić. Nic tu nie jest obowiązkiem.</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Schowaj</translation>
        </message>
        <message>
            <source>Start afresh</source>
            <translation>Zacznij od nowa</translation>
        </message>
        <message>
            <source>The week ahead</source>
            <translation>Najbliższy tydzień</translation>
        </message>
    </context>
    <context>
        <name>WelcomeLine</name>
        <message>
            <source>Three questions and the list in the lid, then you can play. No account.</source>
            <translation>Trzy pytania i lista w wieczku, potem można się bawić. Bez konta.</translation>
        </message>
    </context>
    <context>
        <name>WelcomeScreen</name>
        <message>
            <source>A box has come</source>
            <translation>Przyszło pudełko</translation>
        </message>
        <message>
            <source>A name first; a letter will do.</source>
            <translation>Najpierw imię; wystarczy litera.</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>Wróć do załogi</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Zacznij</translation>
        </message>
        <message>
            <source>From somebody who has this box on their phone</source>
            <translation>Od kogoś, kto ma to pudełko na telefonie</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Dalej</translation>
        </message>
        <message>
            <source>How old is %1?</source>
            <translation>Ile lat ma %1?</translation>
        </message>
        <message>
            <source>I am a therapist: I pack boxes for children</source>
            <translation>Jestem terapeutą: pakuję pudełka dla dzieci</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>Mam kod</translation>
        </message>
        <message>
            <source>Later</source>
            <translation>Później</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>Strona wstecz</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Strona %1 z %2</translation>
        </message>
        <message>
            <source>What lies in the box?</source>
            <translation>Co leży w pudełku?</translation>
        </message>
        <message>
            <source>What must stay away?</source>
            <translation>Czego tu nie może być?</translation>
        </message>
        <message>
            <source>Who else is at home?</source>
            <translation>Kto jeszcze jest w domu?</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>Najpierw twoje imię; wystarczy litera.</translation>
        </message>
    </context>
    <context>
        <name>WhatGoesOut</name>
        <message>
            <source>It is sealed on this phone. Only phones that a parent or the therapist has let in can open it, and each only its part. Notes of your own stay here.</source>
            <translation>Pieczętuje się to na tym telefonie. Otworzyć to mogą tylko telefony wpuszczone przez rodzica lub terapeutę, każdy tylko swoją część. Własne notatki zostają tutaj.</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Nie teraz</translation>
        </message>
        <message>
            <source>What is noted about the box, the home and the play, under the names used here. No surname, no photo, no place on a map.</source>
            <translation>Zapisy o pudełku, domu i zabawie, pod używanymi tu imionami. Bez nazwiska, bez zdjęcia, bez miejsca na mapie.</translation>
        </message>
        <message>
            <source>What leaves this phone</source>
            <translation>Co wychodzi z tego telefonu</translation>
        </message>
        <message>
            <source>You can stop at any time with one tap. What others have by then stays with them.</source>
            <translation>W każdej chwili możesz przestać jednym dotknięciem. To, co inni już mają, u nich zostaje.</translation>
        </message>
    </context>
    <context>
        <name>WhereItGoes</name>
        <message>
            <source>%1 writes on this phone</source>
            <translation>Na tym telefonie pisze %1</translation>
        </message>
        <message>
            <source>A guest until %1: plays and puts back, and sees no goals, notes or kites.</source>
            <translation>Gość do %1: bawi się i odkłada, nie widzi celów, notatek ani latawców.</translation>
        </message>
        <message>
            <source>At work with the shared place.</source>
            <translation>Trwa praca ze wspólnym miejscem.</translation>
        </message>
        <message>
            <source>Come in with a new code</source>
            <translation>Wejdź z nowym kodem</translation>
        </message>
        <message>
            <source>Nothing leaves it. There is no account, and nobody counts how often you play.</source>
            <translation>Nic stąd nie wychodzi. Nie ma konta i nikt nie liczy, jak często się bawicie.</translation>
        </message>
        <message>
            <source>Share now</source>
            <translation>Udostępnij teraz</translation>
        </message>
        <message>
            <source>This phone has no keychain, so its keys lie in a file: who can read the phone's files can read them.</source>
            <translation>Ten telefon nie ma pęku kluczy, więc jego klucze leżą w pliku: kto może czytać pliki telefonu, może je przeczytać.</translation>
        </message>
        <message>
            <source>This phone is not in the crew now: nothing it notes goes out, and nothing new comes. What is on it stays, and goes to the crew once it is in again.</source>
            <translation>Tego telefonu nie ma teraz w załodze: nic z niego nie wychodzi i nic nowego nie przychodzi. To, co na nim jest, zostaje, a po wejściu trafi do załogi.</translation>
        </message>
        <message>
            <source>What is noted goes to the crew, sealed: the place where it lies cannot read it. There is no account, and nobody counts how often you play.</source>
            <translation>Zapisy idą do załogi zapieczętowane: miejsce, gdzie leżą, ich nie przeczyta. Nie ma konta i nikt nie liczy, jak często się bawicie.</translation>
        </message>
        <message>
            <source>What is packed goes to whoever packs too, sealed: the place where it lies cannot read it. There is no account.</source>
            <translation>Co spakowano, trafia zapieczętowane do tych, którzy też pakują: miejsce, w którym leży, nie może tego przeczytać. Nie ma konta.</translation>
        </message>
    </context>
    <context>
        <name>WhoJoins</name>
        <message>
            <source>Join</source>
            <translation>Dołącz</translation>
        </message>
        <message>
            <source>Join, and share in this way?</source>
            <translation>Dołączyć i udostępniać w ten sposób?</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>Chwileczkę.</translation>
        </message>
        <message>
            <source>What are you called here?</source>
            <translation>Jak się tu do ciebie mówi?</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>Najpierw twoje imię; wystarczy litera.</translation>
        </message>
    </context>
    <context>
        <name>WhoLooks</name>
        <message>
            <source>That is me</source>
            <translation>To ja</translation>
        </message>
        <message>
            <source>This box is special. Somebody who did not pack a thing looks it over.</source>
            <translation>To pudełko jest inne niż zwykle. Każdą rzecz sprawdza ktoś, kto jej nie pakował.</translation>
        </message>
        <message>
            <source>Who looks now</source>
            <translation>Kto teraz sprawdza</translation>
        </message>
    </context>
    <context>
        <name>WhoWrites</name>
        <message>
            <source>Who writes now</source>
            <translation>Kto teraz pisze</translation>
        </message>
    </context>
    <context>
        <name>Whom</name>
        <message>
            <source>A day less</source>
            <translation>Dzień mniej</translation>
        </message>
        <message>
            <source>A day more</source>
            <translation>Dzień więcej</translation>
        </message>
        <message>
            <source>For how many days</source>
            <translation>Na ile dni</translation>
        </message>
        <message>
            <source>Until %1, that day too</source>
            <translation>Do %1, ten dzień też</translation>
        </message>
        <message>
            <source>Who is it? This decides what they can see. Whoever is let in writes under their own name.</source>
            <translation>Kto to? Od tego zależy, co będzie widać. Każdy wpuszczony pisze pod własnym imieniem.</translation>
        </message>
    </context>
    <context>
        <name>WhoseScreen</name>
        <message>
            <source>%1 waits with %2.</source>
            <translation>Zabawa czeka: %1. Dziecko: %2.</translation>
        </message>
        <message>
            <source>%1's box</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>Back to the play</source>
            <translation>Wróć do zabawy</translation>
        </message>
        <message>
            <source>Whose box?</source>
            <translation>Czyje pudełko?</translation>
        </message>
    </context>
    <context>
        <name>WordsSettings</name>
        <message>
            <source>Made by a machine, not yet checked by a person. Words that keep somebody safe show the English too.</source>
            <translation>Przetłumaczyła maszyna, człowiek jeszcze nie sprawdził. Słowa, które kogoś chronią, stoją też po angielsku.</translation>
        </message>
    </context>
    <context>
        <name>WorkbenchScreen</name>
        <message>
            <source>Activities of your own</source>
            <translation>Twoje własne zabawy</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>Partie i zakupy</translation>
        </message>
        <message>
            <source>Builds, boxes that come back, lots</source>
            <translation>Partie pudełek, zwroty, serie</translation>
        </message>
        <message>
            <source>For a report</source>
            <translation>Do sprawozdania</translation>
        </message>
        <message>
            <source>No box is with a child yet</source>
            <translation>Żadne pudełko nie jest jeszcze u dziecka</translation>
        </message>
        <message>
            <source>No child's box is on it. What you tick goes to the therapist's phone, and what is ticked there comes here.</source>
            <translation>Nie ma na nim pudełka żadnego dziecka. Co zaznaczysz, trafia na telefon terapeuty, a co zaznaczono tam, przychodzi tutaj.</translation>
        </message>
        <message>
            <source>Packing table</source>
            <translation>Stół do pakowania</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>Runda uzupełnień</translation>
        </message>
        <message>
            <source>Say what belongs in a box, begin a build and pack it. Once a box is handed over, the family comes in by a code, and their box stands here.</source>
            <translation>Powiedz, co należy do pudełka, zacznij nową partię i zapakuj ją. Gdy pudełko zostanie przekazane, rodzina wchodzi przez kod, a jej pudełko stoi tutaj.</translation>
        </message>
        <message>
            <source>This phone packs</source>
            <translation>Ten telefon służy do pakowania</translation>
        </message>
        <message>
            <source>What one play costs, over many boxes</source>
            <translation>Ile kosztuje jedna zabawa, z wielu pudełek</translation>
        </message>
        <message>
            <source>What to buy, for which boxes</source>
            <translation>Co kupić i do których pudełek</translation>
        </message>
        <message>
            <source>Workbench</source>
            <translation>Warsztat</translation>
        </message>
        <message>
            <source>Written by you, with the same checks as ours</source>
            <translation>Napisane przez ciebie, z tymi samymi sprawdzeniami co nasze</translation>
        </message>
    </context>
    <context>
        <name>core</name>
        <message>
            <source>&quot;%1&quot; is not a word of these codes. Did it say &quot;%2&quot;?</source>
            <translation>„%1” nie należy do słów kodu. Czy było tam „%2”?</translation>
        </message>
        <message>
            <source>&quot;%1&quot; is not a word of these codes. Look at it again on the other phone.</source>
            <translation>„%1” nie należy do słów kodu. Spójrz jeszcze raz na drugi telefon.</translation>
        </message>
        <message>
            <source>%1</source>
            <translation>%1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%2: %1</translation>
        </message>
        <message>
            <source>%1 %2 are missing.</source>
            <translation>Brakuje %1: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 back in the box</source>
            <translation>
                <numerusform>%2 (z powrotem w pudełku: %1)</numerusform>
                <numerusform>%2 (z powrotem w pudełku: %1)</numerusform>
                <numerusform>%2 (z powrotem w pudełku: %1)</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 broken</source>
            <translation>%2 (zepsute: %1)</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 counted in</source>
            <translation>
                <numerusform>%2 (doliczone: %1)</numerusform>
                <numerusform>%2 (doliczone: %1)</numerusform>
                <numerusform>%2 (doliczone: %1)</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 dried out</source>
            <translation>%2 (wyschłe: %1)</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 found</source>
            <translation>
                <numerusform>%2 (znalezione: %1)</numerusform>
                <numerusform>%2 (znalezione: %1)</numerusform>
                <numerusform>%2 (znalezione: %1)</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 gone</source>
            <translation>%2 (ubyło: %1)</translation>
        </message>
        <message>
            <source>%1 %2 lost</source>
            <translation>Zgubione: %2, %1</translation>
        </message>
        <message>
            <source>%1 %2 still in use</source>
            <translation>%2 (jeszcze w użyciu: %1)</translation>
        </message>
        <message>
            <source>%1 %2 used up</source>
            <translation>Zużyte: %2, %1</translation>
        </message>
        <message>
            <source>%1 (%2) instead of %3 (%4).</source>
            <translation>%1 (%2), a nie %3 (%4).</translation>
        </message>
        <message>
            <source>%1 April</source>
            <translation>%1 kwietnia</translation>
        </message>
        <message>
            <source>%1 April %2</source>
            <translation>%1 kwietnia %2</translation>
        </message>
        <message>
            <source>%1 August</source>
            <translation>%1 sierpnia</translation>
        </message>
        <message>
            <source>%1 August %2</source>
            <translation>%1 sierpnia %2</translation>
        </message>
        <message>
            <source>%1 December</source>
            <translation>%1 grudnia</translation>
        </message>
        <message>
            <source>%1 December %2</source>
            <translation>%1 grudnia %2</translation>
        </message>
        <message>
            <source>%1 February</source>
            <translation>%1 lutego</translation>
        </message>
        <message>
            <source>%1 February %2</source>
            <translation>%1 lutego %2</translation>
        </message>
        <message>
            <source>%1 January</source>
            <translation>%1 stycznia</translation>
        </message>
        <message>
            <source>%1 January %2</source>
            <translation>%1 stycznia %2</translation>
        </message>
        <message>
            <source>%1 July</source>
            <translation>%1 lipca</translation>
        </message>
        <message>
            <source>%1 July %2</source>
            <translation>%1 lipca %2</translation>
        </message>
        <message>
            <source>%1 June</source>
            <translation>%1 czerwca</translation>
        </message>
        <message>
            <source>%1 June %2</source>
            <translation>%1 czerwca %2</translation>
        </message>
        <message>
            <source>%1 March</source>
            <translation>%1 marca</translation>
        </message>
        <message>
            <source>%1 March %2</source>
            <translation>%1 marca %2</translation>
        </message>
        <message>
            <source>%1 May</source>
            <translation>%1 maja</translation>
        </message>
        <message>
            <source>%1 May %2</source>
            <translation>%1 maja %2</translation>
        </message>
        <message>
            <source>%1 Noted: %2</source>
            <translation>%1 Zapisano: %2</translation>
        </message>
        <message>
            <source>%1 November</source>
            <translation>%1 listopada</translation>
        </message>
        <message>
            <source>%1 November %2</source>
            <translation>%1 listopada %2</translation>
        </message>
        <message>
            <source>%1 October</source>
            <translation>%1 października</translation>
        </message>
        <message>
            <source>%1 October %2</source>
            <translation>%1 października %2</translation>
        </message>
        <message>
            <source>%1 September</source>
            <translation>%1 września</translation>
        </message>
        <message>
            <source>%1 September %2</source>
            <translation>%1 września %2</translation>
        </message>
        <message>
            <source>%1 Why: %2</source>
            <translation>%1 Dlaczego: %2</translation>
        </message>
        <message>
            <source>%1 afternoon</source>
            <translation>%1 po południu</translation>
        </message>
        <message>
            <source>%1 and %2 are under three and are here: no %3.</source>
            <translation>%1 i %2 mają poniżej trzech lat i są tu: bez %3.</translation>
        </message>
        <message>
            <source>%1 and %2 each noted %3 %4.</source>
            <translation>%1 i %2, każde osobno, %4: %3.</translation>
        </message>
        <message>
            <source>%1 and %2 live here: no %3 in this home at any time.</source>
            <translation>Tu mieszkają %1 i %2: w tym domu nigdy nie może być %3.</translation>
        </message>
        <message>
            <source>%1 and %2 may put things in the mouth: no %3.</source>
            <translation>%1 i %2 mogą brać rzeczy do buzi: bez %3.</translation>
        </message>
        <message>
            <source>%1 answered that question before. Nothing was lost, and that answer stands.</source>
            <translation>Wcześniej odpowiada na to pytanie: %1. Nic nie zginęło i ta odpowiedź obowiązuje.</translation>
        </message>
        <message>
            <source>%1 boxes more: nothing more to pay.</source>
            <translation>Pudełka więcej: %1. Nic nie trzeba dopłacać.</translation>
        </message>
        <message>
            <source>%1 boxes more: nothing more to pay. What lies in one of them is worth %2.</source>
            <translation>Pudełka więcej: %1. Nic nie dopłacisz. To, co leży w jednym, jest warte %2.</translation>
        </message>
        <message>
            <source>%1 boxes more: the till asks for %2 more.</source>
            <translation>Pudełka więcej: %1. Przy kasie dopłacisz %2.</translation>
        </message>
        <message>
            <source>%1 boxes more: the till asks for %2 more. What lies in one of them is worth %3.</source>
            <translation>Pudełka więcej: %1. Przy kasie dopłacisz %2. To, co leży w jednym, jest warte %3.</translation>
        </message>
        <message>
            <source>%1 broken</source>
            <translation>zepsute: %1</translation>
        </message>
        <message>
            <source>%1 counted %2</source>
            <translation>%1 liczy: %2</translation>
        </message>
        <message>
            <source>%1 counted %2 %3 %4.</source>
            <translation>%1, %4: %3, policzone: %2.</translation>
        </message>
        <message>
            <source>%1 counted %2 %3.</source>
            <translation>%1: %3, policzone: %2.</translation>
        </message>
        <message>
            <source>%1 counted in %2 %3.</source>
            <translation>%1: %3, doliczone: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%1 days</source>
            <translation>
                <numerusform>%1 dzień</numerusform>
                <numerusform>%1 dni</numerusform>
                <numerusform>%1 dni</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 dried out</source>
            <translation>wyschłe: %1</translation>
        </message>
        <message>
            <source>%1 evening</source>
            <translation>%1 wieczorem</translation>
        </message>
        <message>
            <source>%1 from %2</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 gone</source>
            <translation>ubyło: %1</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>Razem %1</translation>
        </message>
        <message>
            <source>%1 in the box.</source>
            <translation>W pudełku: %1.</translation>
        </message>
        <message>
            <source>%1 in the week of %2.</source>
            <translation>%1 w tygodniu od %2.</translation>
        </message>
        <message>
            <source>%1 in this box</source>
            <translation>%1 w tym pudełku</translation>
        </message>
        <message>
            <source>%1 instead of %2.</source>
            <translation>%1, a nie %2.</translation>
        </message>
        <message>
            <source>%1 is asked.</source>
            <translation>Pytanie do: %1.</translation>
        </message>
        <message>
            <source>%1 is in force since %2. A lid that says less is out of date: print it again.</source>
            <translation>Od %2 obowiązuje %1. Wieczko z mniejszą liczbą jest nieaktualne: wydrukuj listę od nowa.</translation>
        </message>
        <message>
            <source>%1 is not in the crew any more. What came from there since was not taken in.</source>
            <translation>%1 nie jest już w załodze. To, co przyszło stamtąd później, nie zostało przyjęte.</translation>
        </message>
        <message>
            <source>%1 is under three and is here: no %2.</source>
            <translation>%1 ma poniżej trzech lat i jest tu: bez %2.</translation>
        </message>
        <message>
            <source>%1 lives here: no %2 in this home at any time.</source>
            <translation>%1 tu mieszka: w tym domu nigdy nie może być %2.</translation>
        </message>
        <message>
            <source>%1 lost</source>
            <translation>zgubione: %1</translation>
        </message>
        <message>
            <source>%1 may put things in the mouth: no %2.</source>
            <translation>%1 może brać rzeczy do buzi: bez %2.</translation>
        </message>
        <message numerus="yes">
            <source>%1 missing</source>
            <translation>
                <numerusform>Brakuje: %1</numerusform>
                <numerusform>Brakuje: %1</numerusform>
                <numerusform>Brakuje: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 morning</source>
            <translation>%1 rano</translation>
        </message>
        <message>
            <source>%1 needs the pair for the left hand. Put these back.</source>
            <translation>%1: potrzebna para na lewą rękę. Odłóż te.</translation>
        </message>
        <message>
            <source>%1 needs the pair for the right hand. Put these back.</source>
            <translation>%1: potrzebna para na prawą rękę. Odłóż te.</translation>
        </message>
        <message>
            <source>%1 noted %2 %3, on two phones.</source>
            <translation>%1, %3, na dwóch telefonach: %2.</translation>
        </message>
        <message>
            <source>%1 noted %2 %3.</source>
            <translation>%1, %3: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%1 notes wait on this phone</source>
            <translation>
                <numerusform>Na tym telefonie czeka %1 zapis</numerusform>
                <numerusform>Na tym telefonie czekają %1 zapisy</numerusform>
                <numerusform>Na tym telefonie czeka %1 zapisów</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of %2 in.</source>
            <translation>W środku %1 z %2.</translation>
        </message>
        <message>
            <source>%1 on %2: %3</source>
            <translation>%1, %2: %3</translation>
        </message>
        <message>
            <source>%1 or %2</source>
            <translation>%1 lub %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 pages of the catalogue cannot be read and are left out, %2 among them. All else is here.</source>
            <translation>
                <numerusform>Nie da się odczytać %1 strony katalogu i jest pominięta: %2. Wszystko inne jest.</numerusform>
                <numerusform>Nie da się odczytać %1 stron katalogu i są pominięte, wśród nich %2. Wszystko inne jest.</numerusform>
                <numerusform>Nie da się odczytać %1 stron katalogu i są pominięte, wśród nich %2. Wszystko inne jest.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces</source>
            <translation>
                <numerusform>%1 sztuka</numerusform>
                <numerusform>%1 sztuki</numerusform>
                <numerusform>%1 sztuk</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 put %2 %3 in %4.</source>
            <translation>%1, %4: %3, włożone: %2.</translation>
        </message>
        <message>
            <source>%1 said so of %4: %2, %3.</source>
            <translation>%1 tak mówi (dotyczy: %4): %2, %3.</translation>
        </message>
        <message>
            <source>%1 said so: %2, %3.</source>
            <translation>%1 tak mówi: %2, %3.</translation>
        </message>
        <message>
            <source>%1 says: %2.</source>
            <translation>%1 mówi: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%1 small pieces are missing.</source>
            <translation>
                <numerusform>Brakuje %1 małej części.</numerusform>
                <numerusform>Brakuje %1 małych części.</numerusform>
                <numerusform>Brakuje %1 małych części.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 small pieces are not found.</source>
            <translation>
                <numerusform>Nie znaleziono %1 małej części.</numerusform>
                <numerusform>Nie znaleziono %1 małych części.</numerusform>
                <numerusform>Nie znaleziono %1 małych części.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 still in use</source>
            <translation>jeszcze w użyciu: %1</translation>
        </message>
        <message numerus="yes">
            <source>%1 things counted</source>
            <translation>
                <numerusform>Policzone rzeczy: %1</numerusform>
                <numerusform>Policzone rzeczy: %1</numerusform>
                <numerusform>Policzone rzeczy: %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 times %2 told us both.</source>
            <translation>
                <numerusform>Oba razy pokazuje %2: %1 raz.</numerusform>
                <numerusform>Oba razy pokazuje %2: %1 razy.</numerusform>
                <numerusform>Oba razy pokazuje %2: %1 razy.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 times an adult guessed both.</source>
            <translation>
                <numerusform>Oba razy domysł dorosłego: %1 raz.</numerusform>
                <numerusform>Oba razy domysł dorosłego: %1 razy.</numerusform>
                <numerusform>Oba razy domysł dorosłego: %1 razy.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 do %2</translation>
        </message>
        <message>
            <source>%1 to be cleaned or replaced first</source>
            <translation>%1: najpierw wyczyścić albo wymienić</translation>
        </message>
        <message>
            <source>%1 too: %2.</source>
            <translation>Dodatkowo %1: %2.</translation>
        </message>
        <message>
            <source>%1 used up</source>
            <translation>zużyte: %1</translation>
        </message>
        <message>
            <source>%1 uses a newer Lidlark. Bring this phone up to date to see what they shared.</source>
            <translation>%1 ma nowszy Lidlark. Zaktualizuj ten telefon, żeby zobaczyć, co przysłano.</translation>
        </message>
        <message numerus="yes">
            <source>%1 weeks</source>
            <translation>
                <numerusform>%1 tydzień</numerusform>
                <numerusform>%1 tygodnie</numerusform>
                <numerusform>%1 tygodni</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 went out. %2 home.</source>
            <translation>Wyjęte: %1. Na miejscu: %2.</translation>
        </message>
        <message>
            <source>%1 wrote why: %2</source>
            <translation>%1 pisze, dlaczego: %2</translation>
        </message>
        <message>
            <source>%1 × pack of %2, at %3</source>
            <translation>%1 × paczka po %2 szt., cena %3</translation>
        </message>
        <message>
            <source>%1's box</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, all home</source>
            <translation>%1, wszystko na miejscu</translation>
        </message>
        <message>
            <source>%1, not %2.</source>
            <translation>%1, nie %2.</translation>
        </message>
        <message>
            <source>%1, packs to buy: %2 instead of %3.</source>
            <translation>%1, paczki do kupienia: %2 zamiast %3.</translation>
        </message>
        <message>
            <source>%1, packs to buy: %2.</source>
            <translation>%1, paczki do kupienia: %2.</translation>
        </message>
        <message>
            <source>%1, says %2</source>
            <translation>%1, mówi %2</translation>
        </message>
        <message>
            <source>%1, says %2, %3.</source>
            <translation>%1, mówi %2, %3.</translation>
        </message>
        <message>
            <source>%1.</source>
            <translation>%1.</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>%1. %2, %3.</source>
            <translation>%1. %2, %3.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 counted</source>
            <translation>%1: policzone %2</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. %4 are missing.</source>
            <translation>%1: policzone %2, oczekiwane %3. Brakuje %4.</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. %4 more.</source>
            <translation>%1: policzone %2, oczekiwane %3. O %4 więcej.</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. At least %4 missing.</source>
            <translation>%1: policzone %2, oczekiwane %3. Brakuje co najmniej %4.</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. One is missing.</source>
            <translation>%1: policzone %2, oczekiwane %3. Brakuje jednej sztuki.</translation>
        </message>
        <message>
            <source>%1: %2 here, not %3.</source>
            <translation>%1: tutaj %2, nie %3.</translation>
        </message>
        <message>
            <source>%1: %2 in the week of %3.</source>
            <translation>%1: %2 w tygodniu od %3.</translation>
        </message>
        <message>
            <source>%1: %2 instead of %3.</source>
            <translation>%1: %2 zamiast %3.</translation>
        </message>
        <message>
            <source>%1: a pack costs 0 to %2 pence.</source>
            <translation>%1: paczka kosztuje od 0 do %2 pensów.</translation>
        </message>
        <message>
            <source>%1: a pack holds 1 to %2 pieces.</source>
            <translation>%1: w paczce jest od 1 do %2 sztuk.</translation>
        </message>
        <message>
            <source>%1: a second person looks it over first</source>
            <translation>%1: najpierw sprawdza druga osoba</translation>
        </message>
        <message>
            <source>%1: all back</source>
            <translation>%1: wszystko wróciło</translation>
        </message>
        <message>
            <source>%1: asked for</source>
            <translation>%1: prośba</translation>
        </message>
        <message>
            <source>%1: asked for as written</source>
            <translation>%1: prośba, żeby tak, jak napisano</translation>
        </message>
        <message>
            <source>%1: asked for easier</source>
            <translation>%1: prośba, żeby łatwiej</translation>
        </message>
        <message>
            <source>%1: asked for harder</source>
            <translation>%1: prośba, żeby trudniej</translation>
        </message>
        <message>
            <source>%1: asked for in no special way</source>
            <translation>%1: bez prośby o konkretny sposób</translation>
        </message>
        <message>
            <source>%1: asked for it again</source>
            <translation>%1: chce jeszcze raz</translation>
        </message>
        <message>
            <source>%1: at least one</source>
            <translation>%1: co najmniej jedno</translation>
        </message>
        <message>
            <source>%1: at most %2 packs to choose from. Take some out.</source>
            <translation>%1: do wyboru może być najwyżej tyle rodzajów paczek: %2. Usuń niektóre.</translation>
        </message>
        <message>
            <source>%1: begun</source>
            <translation>%1: początek zabawy</translation>
        </message>
        <message>
            <source>%1: below zero</source>
            <translation>%1: poniżej zera</translation>
        </message>
        <message>
            <source>%1: cannot be washed</source>
            <translation>%1: nie da się umyć</translation>
        </message>
        <message>
            <source>%1: counted in</source>
            <translation>%1: doliczone</translation>
        </message>
        <message>
            <source>%1: empty</source>
            <translation>%1: puste</translation>
        </message>
        <message>
            <source>%1: five minutes to play?</source>
            <translation>%1: pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>%1: floor checked, not found</source>
            <translation>%1: podłoga sprawdzona, nie ma</translation>
        </message>
        <message>
            <source>%1: found left open</source>
            <translation>%1: znalezione otwarte</translation>
        </message>
        <message>
            <source>%1: found own way</source>
            <translation>%1: własny sposób</translation>
        </message>
        <message>
            <source>%1: has not come back</source>
            <translation>%1: nie wróciło</translation>
        </message>
        <message>
            <source>%1: holds what this home must avoid</source>
            <translation>%1: zawiera to, czego ten dom musi unikać</translation>
        </message>
        <message>
            <source>%1: how things stand</source>
            <translation>%1: jak jest teraz</translation>
        </message>
        <message>
            <source>%1: is for that child already</source>
            <translation>%1: jest już dla tego dziecka</translation>
        </message>
        <message>
            <source>%1: is not with a child</source>
            <translation>%1: nie jest u dziecka</translation>
        </message>
        <message>
            <source>%1: is replaced, not cleaned</source>
            <translation>%1: wymienia się, nie czyści</translation>
        </message>
        <message>
            <source>%1: its price is in another currency than the build. Change the one or the other.</source>
            <translation>%1: cena jest w innej walucie niż całe pakowanie. Zmień jedno albo drugie.</translation>
        </message>
        <message>
            <source>%1: keeps as long as its kind does</source>
            <translation>%1: wytrzyma tyle, co rzeczy tego rodzaju</translation>
        </message>
        <message>
            <source>%1: kept for %2</source>
            <translation>%1: zachowane na dzień: %2</translation>
        </message>
        <message>
            <source>%1: left free</source>
            <translation>%1: wolne</translation>
        </message>
        <message>
            <source>%1: listed twice among the items. Keep one.</source>
            <translation>%1: jest na liście rzeczy dwa razy. Zostaw jeden wpis.</translation>
        </message>
        <message>
            <source>%1: looked over, good</source>
            <translation>%1: obejrzane, dobre</translation>
        </message>
        <message>
            <source>%1: made for the other hand</source>
            <translation>%1: na drugą rękę</translation>
        </message>
        <message>
            <source>%1: more is needed than lies on the shelf, and no shop is named. Add a pack with its price.</source>
            <translation>%1: potrzeba więcej, niż leży na półce, a nie podano sklepu. Dodaj paczkę z ceną.</translation>
        </message>
        <message>
            <source>%1: more than 999</source>
            <translation>%1: więcej niż 999</translation>
        </message>
        <message>
            <source>%1: more than are out, or none</source>
            <translation>%1: więcej, niż jest wyjęte, albo nic</translation>
        </message>
        <message>
            <source>%1: more than is missing, or none</source>
            <translation>%1: więcej, niż brakuje, albo nic</translation>
        </message>
        <message>
            <source>%1: more than the box held</source>
            <translation>%1: więcej, niż było w pudełku</translation>
        </message>
        <message>
            <source>%1: named twice</source>
            <translation>%1: podane dwa razy</translation>
        </message>
        <message>
            <source>%1: need not leave the house</source>
            <translation>%1: nie trzeba wynosić z domu</translation>
        </message>
        <message>
            <source>%1: needed help</source>
            <translation>%1: z pomocą</translation>
        </message>
        <message>
            <source>%1: nobody has said what it holds</source>
            <translation>%1: nikt nie powiedział, co zawiera</translation>
        </message>
        <message>
            <source>%1: nobody's yet</source>
            <translation>%1: jeszcze niczyje</translation>
        </message>
        <message numerus="yes">
            <source>%1: none in the last %2 weeks.</source>
            <translation>
                <numerusform>%1: nic w ostatnim %2 tygodniu.</numerusform>
                <numerusform>%1: nic w ostatnich %2 tygodniach.</numerusform>
                <numerusform>%1: nic w ostatnich %2 tygodniach.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: none of the five steps</source>
            <translation>%1: żaden z pięciu poziomów</translation>
        </message>
        <message>
            <source>%1: not after the day it was agreed</source>
            <translation>%1: nie po dniu uzgodnienia</translation>
        </message>
        <message>
            <source>%1: not all of it is packed</source>
            <translation>%1: nie wszystko spakowane</translation>
        </message>
        <message>
            <source>%1: not missing</source>
            <translation>%1: nie brakuje</translation>
        </message>
        <message>
            <source>%1: not opened after all</source>
            <translation>%1: jednak nieotwarte</translation>
        </message>
        <message>
            <source>%1: not packed</source>
            <translation>%1: niespakowane</translation>
        </message>
        <message>
            <source>%1: nothing in it</source>
            <translation>%1: nic w środku</translation>
        </message>
        <message>
            <source>%1: on its way</source>
            <translation>%1: w drodze</translation>
        </message>
        <message>
            <source>%1: once opened, keeps days: %2</source>
            <translation>%1: po otwarciu wytrzyma dni: %2</translation>
        </message>
        <message>
            <source>%1: one line of plain text only</source>
            <translation>%1: tylko jeden wiersz zwykłego tekstu</translation>
        </message>
        <message>
            <source>%1: open again</source>
            <translation>%1: znów do zaplanowania</translation>
        </message>
        <message>
            <source>%1: opened %2</source>
            <translation>%1: otwarte %2</translation>
        </message>
        <message>
            <source>%1: opened today</source>
            <translation>%1: otwarte dziś</translation>
        </message>
        <message>
            <source>%1: other packs, as many.</source>
            <translation>%1: inne paczki, tyle samo.</translation>
        </message>
        <message>
            <source>%1: our way kept</source>
            <translation>%1: nasz sposób zapisany</translation>
        </message>
        <message>
            <source>%1: our way taken off</source>
            <translation>%1: nasz sposób usunięty</translation>
        </message>
        <message>
            <source>%1: out of the house</source>
            <translation>%1: wyniesione z domu</translation>
        </message>
        <message>
            <source>%1: packed</source>
            <translation>%1: spakowane</translation>
        </message>
        <message>
            <source>%1: pieces in stock are 0 or more. Count the shelf again.</source>
            <translation>%1: zapas to 0 sztuk lub więcej. Policz półkę jeszcze raz.</translation>
        </message>
        <message>
            <source>%1: played as written</source>
            <translation>%1: zabawa tak, jak napisano</translation>
        </message>
        <message>
            <source>%1: played easier</source>
            <translation>%1: zabawa w łatwiejszy sposób</translation>
        </message>
        <message>
            <source>%1: played harder</source>
            <translation>%1: zabawa w trudniejszy sposób</translation>
        </message>
        <message>
            <source>%1: put back, not all as it was</source>
            <translation>%1: odłożone, nie wszystko tak, jak było</translation>
        </message>
        <message>
            <source>%1: question answered</source>
            <translation>%1: jest odpowiedź na pytanie</translation>
        </message>
        <message>
            <source>%1: replaced</source>
            <translation>%1: wymienione</translation>
        </message>
        <message>
            <source>%1: request seen</source>
            <translation>%1: prośba widziana</translation>
        </message>
        <message>
            <source>%1: say for which hand</source>
            <translation>%1: powiedz, na którą rękę</translation>
        </message>
        <message>
            <source>%1: say why it differs</source>
            <translation>%1: powiedz, dlaczego jest inaczej</translation>
        </message>
        <message>
            <source>%1: some pieces are still missing</source>
            <translation>%1: niektórych sztuk jeszcze brakuje</translation>
        </message>
        <message>
            <source>%1: somebody else looks it over</source>
            <translation>%1: sprawdza ktoś inny</translation>
        </message>
        <message>
            <source>%1: something has to come out first</source>
            <translation>%1: najpierw trzeba coś wyjąć</translation>
        </message>
        <message>
            <source>%1: something is there already</source>
            <translation>%1: coś już tam jest</translation>
        </message>
        <message>
            <source>%1: still to come</source>
            <translation>%1: jeszcze nie przyszło</translation>
        </message>
        <message>
            <source>%1: still with a child</source>
            <translation>%1: jeszcze u dziecka</translation>
        </message>
        <message>
            <source>%1: stopped early</source>
            <translation>%1: przerwane wcześniej</translation>
        </message>
        <message>
            <source>%1: the same as another step</source>
            <translation>%1: tak samo jak inny poziom</translation>
        </message>
        <message>
            <source>%1: there is no price yet. Look it up and add it.</source>
            <translation>%1: nie ma jeszcze ceny. Sprawdź ją i dopisz.</translation>
        </message>
        <message>
            <source>%1: too long</source>
            <translation>%1: za długie</translation>
        </message>
        <message>
            <source>%1: used no more</source>
            <translation>%1: już nieużywane</translation>
        </message>
        <message>
            <source>%1: was handed over as this build</source>
            <translation>%1: już przekazane z tej partii</translation>
        </message>
        <message>
            <source>%1: was in a mouth</source>
            <translation>%1: było w buzi</translation>
        </message>
        <message>
            <source>%1: washed</source>
            <translation>%1: umyte</translation>
        </message>
        <message>
            <source>%1: written in two ways</source>
            <translation>%1: zapisane na dwa sposoby</translation>
        </message>
        <message>
            <source>1 day</source>
            <translation>1 dzień</translation>
        </message>
        <message>
            <source>1 piece</source>
            <translation>1 sztuka</translation>
        </message>
        <message>
            <source>16 CFR 1500.19(b)</source>
            <translation>16 CFR 1500.19(b)</translation>
        </message>
        <message>
            <source>A bag has an opening, a sheet two edges: measure one of these.</source>
            <translation>Torebka ma otwór, arkusz dwa brzegi: zmierz jedno z nich.</translation>
        </message>
        <message>
            <source>A ball has a size: it cannot be soft.</source>
            <translation>Kula ma wymiar: nie może być miękka.</translation>
        </message>
        <message>
            <source>A battery</source>
            <translation>Bateria</translation>
        </message>
        <message>
            <source>A blunt table fork, sitting down.</source>
            <translation>Tępy widelec stołowy, na siedząco.</translation>
        </message>
        <message>
            <source>A box has no code. Give it one that no other box has.</source>
            <translation>Jedno pudełko nie ma kodu. Nadaj mu kod, którego nie ma żadne inne.</translation>
        </message>
        <message>
            <source>A build holds at most %1 boxes. Make two of it.</source>
            <translation>Razem można pakować najwyżej %1 pudełek. Podziel je na dwie części.</translation>
        </message>
        <message>
            <source>A build knows at most %1 kinds of item. Take out those it does not need.</source>
            <translation>Najwyżej tyle rodzajów rzeczy: %1. Usuń te, które nie są potrzebne.</translation>
        </message>
        <message>
            <source>A caution of what it is played with is missing.</source>
            <translation>Brakuje ostrzeżenia o czymś, czego się używa.</translation>
        </message>
        <message>
            <source>A clinic writes a record of its own about its work with a child. The law says for how long it must keep that, so it stays there when you erase yours.</source>
            <translation>Przychodnia prowadzi własną dokumentację pracy z dzieckiem. Prawo mówi, jak długo musi ją trzymać, więc zostaje tam także wtedy, gdy usuniesz swoje zapisy.</translation>
        </message>
        <message>
            <source>A clinician has checked %1 of the %2 activities; the others were written with care and wait for it. Follow your local rules and your therapist.</source>
            <translation>Specjalista medyczny sprawdził %1 z %2 zabaw; pozostałe napisano starannie i na to czekają. Trzymaj się miejscowych zasad i wskazówek swojego terapeuty.</translation>
        </message>
        <message>
            <source>A code has nine words; here are more.</source>
            <translation>Kod ma dziewięć słów; tu jest ich więcej.</translation>
        </message>
        <message numerus="yes">
            <source>A code has nine words; here is only %1.</source>
            <translation>
                <numerusform>Kod ma dziewięć słów; tu jest tylko %1.</numerusform>
                <numerusform>Kod ma dziewięć słów; tu są tylko %1.</numerusform>
                <numerusform>Kod ma dziewięć słów; tu jest tylko %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>A coin may be a button battery: treat it as one.</source>
            <translation>Moneta może być baterią guzikową: traktuj ją jak baterię.</translation>
        </message>
        <message>
            <source>A currency is three capital letters, such as GBP.</source>
            <translation>Waluta to trzy wielkie litery, na przykład GBP.</translation>
        </message>
        <message>
            <source>A file there cannot be given another name: something in front of the server is in the way. Choose another place, or ask whoever looks after it.</source>
            <translation>Plik nie może tam dostać innej nazwy: coś stoi przed serwerem na drodze. Wybierz inne miejsce albo zapytaj jego opiekuna.</translation>
        </message>
        <message>
            <source>A magnet</source>
            <translation>Magnes</translation>
        </message>
        <message>
            <source>A magnet or a button battery: go to hospital without waiting.</source>
            <translation>Magnes albo bateria guzikowa: jedź do szpitala, nie czekaj.</translation>
        </message>
        <message>
            <source>A name or a password stands in the address and below it as well. Leave one of them out.</source>
            <translation>Nazwa albo hasło jest i w adresie, i pod nim. Pomiń jedno z nich.</translation>
        </message>
        <message>
            <source>A newer Lidlark made this file. Bring this phone up to date, then open it again.</source>
            <translation>Ten plik zrobił nowszy Lidlark. Zaktualizuj ten telefon, potem otwórz plik znowu.</translation>
        </message>
        <message>
            <source>A newer Lidlark wrote one family's file: %1. Bring Lidlark up to date on this phone to open it. The others are as they were.</source>
            <translation>Plik jednej rodziny zapisał nowszy Lidlark: %1. Żeby otworzyć ten plik, zaktualizuj Lidlark na tym telefonie. Pozostałe są takie, jakie były.</translation>
        </message>
        <message>
            <source>A newer Lidlark wrote this store. It was left as it is. Bring Lidlark up to date on this phone, then open it again.</source>
            <translation>Ten zbiór zapisał nowszy Lidlark. Zostaje taki, jaki był. Zaktualizuj Lidlark na tym telefonie, potem otwórz zbiór znowu.</translation>
        </message>
        <message>
            <source>A note of your own kept</source>
            <translation>Własna notatka zapisana</translation>
        </message>
        <message>
            <source>A note of your own may go to the therapist</source>
            <translation>Własna notatka może trafić do terapeuty</translation>
        </message>
        <message>
            <source>A note of your own taken off</source>
            <translation>Własna notatka usunięta</translation>
        </message>
        <message>
            <source>A part of what %1 shared is damaged, or was put in its place by somebody else. It was not taken in.</source>
            <translation>Część tego, co udostępnia %1, jest uszkodzona albo podłożył ją ktoś inny. Nie została przyjęta.</translation>
        </message>
        <message>
            <source>A piece of balloon may still lie about. Look first, then say so.</source>
            <translation>Gdzieś może jeszcze leżeć kawałek balonu. Najpierw poszukaj, potem to zapisz.</translation>
        </message>
        <message>
            <source>A small child lives here: %1 need a box kept up high. Say so on the home sheet.</source>
            <translation>Mieszka tu małe dziecko: do %1 potrzebne jest pudełko trzymane wysoko. Zapisz to w karcie domu.</translation>
        </message>
        <message>
            <source>A small child lives here: %1 only as your therapist has noted, for example asleep or out. Ask your therapist.</source>
            <translation>Mieszka tu małe dziecko: użycie %1 tylko tak, jak zapisał terapeuta, na przykład gdy dziecko śpi albo wyszło. Zapytaj terapeutę.</translation>
        </message>
        <message>
            <source>A small child may live here: no %1 in this home.</source>
            <translation>Może tu mieszkać małe dziecko: w tym domu nie może być %1.</translation>
        </message>
        <message>
            <source>A small piece may still lie on the floor. Look first, then say so.</source>
            <translation>Na podłodze może jeszcze leżeć mała część. Najpierw poszukaj, potem to zapisz.</translation>
        </message>
        <message>
            <source>A small skill</source>
            <translation>Mała umiejętność</translation>
        </message>
        <message>
            <source>Added: %1 (%2).</source>
            <translation>Dodane: %1 (%2).</translation>
        </message>
        <message>
            <source>After bath: five minutes to play?</source>
            <translation>Po kąpieli: pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>After school: five minutes to play?</source>
            <translation>Po szkole: pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>After tea: five minutes to play?</source>
            <translation>Po kolacji: pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>After the count</source>
            <translation>Po liczeniu</translation>
        </message>
        <message>
            <source>Agreed on %1. Looked at again on %2.</source>
            <translation>Ustalone %1. Wrócimy do tego %2.</translation>
        </message>
        <message>
            <source>Agreed together on %1: %2</source>
            <translation>Uzgodnione razem, %1: %2</translation>
        </message>
        <message>
            <source>All back</source>
            <translation>Wszystko wróciło</translation>
        </message>
        <message>
            <source>All in. A second person looks it over: %1 of %2.</source>
            <translation>Wszystko w środku. Druga osoba sprawdza: %1 z %2.</translation>
        </message>
        <message>
            <source>All it needs is here</source>
            <translation>Jest wszystko, czego trzeba</translation>
        </message>
        <message>
            <source>All of it is taken out.</source>
            <translation>Wszystko już wyjęte.</translation>
        </message>
        <message>
            <source>All of these need a table.</source>
            <translation>Wszystkie potrzebują stołu.</translation>
        </message>
        <message>
            <source>All that this phone held about %1 on %2.</source>
            <translation>Wszystko, co było na tym telefonie dnia %2 (dotyczy: %1).</translation>
        </message>
        <message>
            <source>An address begins with https. Copy the one for WebDAV.</source>
            <translation>Adres zaczyna się od https. Skopiuj adres WebDAV.</translation>
        </message>
        <message>
            <source>An adult sits right beside for what this is played with.</source>
            <translation>Przy tych rzeczach dorosły siedzi tuż obok.</translation>
        </message>
        <message>
            <source>And others.</source>
            <translation>I inne.</translation>
        </message>
        <message>
            <source>Another goal takes its place</source>
            <translation>Jego miejsce zajmuje inny cel</translation>
        </message>
        <message>
            <source>Another number was packed. Count it again.</source>
            <translation>Spakowano inną liczbę. Policz jeszcze raz.</translation>
        </message>
        <message>
            <source>Another phone has used this code. Ask for a new one.</source>
            <translation>Tego kodu użył już inny telefon. Poproś o nowy.</translation>
        </message>
        <message>
            <source>Another phone writes under the name of this one: one of them is a copy. This one shares nothing until somebody of the crew lets it in again.</source>
            <translation>Inny telefon pisze pod nazwą tego: jeden z nich jest kopią. Ten nie udostępnia niczego, dopóki ktoś z załogi nie wpuści go znowu.</translation>
        </message>
        <message>
            <source>Another program is using one family's file: %1. Close it, then open Lidlark again. The others are as they were.</source>
            <translation>Pliku jednej rodziny używa inny program: %1. Zamknij ten program, potem otwórz Lidlark znowu. Pozostałe są takie, jakie były.</translation>
        </message>
        <message>
            <source>Another program is using this store. Close it, then try again. Nothing was changed.</source>
            <translation>Tego zbioru używa inny program. Zamknij go i spróbuj znowu. Nic się nie zmieniło.</translation>
        </message>
        <message>
            <source>Anything else about the box</source>
            <translation>Coś jeszcze o pudełku</translation>
        </message>
        <message>
            <source>April</source>
            <translation>kwiecień</translation>
        </message>
        <message>
            <source>Arm's reach</source>
            <translation>Zasięg ręki</translation>
        </message>
        <message>
            <source>As designed.</source>
            <translation>Jak we wzorze.</translation>
        </message>
        <message>
            <source>Ask about this at the next visit</source>
            <translation>Zapytać o to przy następnej wizycie</translation>
        </message>
        <message>
            <source>Ask or sign first. Stop when your child pulls away.</source>
            <translation>Najpierw zapytaj lub daj znak. Przestań, gdy dziecko się odsuwa.</translation>
        </message>
        <message>
            <source>Ask the clinic for a copy of it, or to put something in it right.</source>
            <translation>Poproś przychodnię o kopię albo o poprawienie czegoś.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Prośba</translation>
        </message>
        <message>
            <source>Asked for it again</source>
            <translation>Chce jeszcze raz</translation>
        </message>
        <message>
            <source>Asked for: %1.</source>
            <translation>Prośba o: %1.</translation>
        </message>
        <message>
            <source>At home, latex may also be in balloons, rubber gloves, some sticky tapes and soft squeezy toys. Ask of each stretchy thing: is it latex-free?</source>
            <translation>Lateks może też być w domu w balonach, gumowych rękawiczkach, niektórych taśmach klejących i miękkich zabawkach do ściskania. O każdą rozciągliwą rzecz zapytaj: czy jest bez lateksu?</translation>
        </message>
        <message>
            <source>At home, wheat may also be in bought dough, flour paste, papier mache and pasta for play.</source>
            <translation>Pszenica może też być w domu w kupionej ciastolinie, kleju z mąki, papier-mâché i makaronie do zabawy.</translation>
        </message>
        <message>
            <source>At most five breaths or puffs, then rest. Stop if dizzy.</source>
            <translation>Najwyżej pięć oddechów lub dmuchnięć, potem odpoczynek. Przestań, gdy komuś kręci się w głowie.</translation>
        </message>
        <message>
            <source>At most ten things are played with.</source>
            <translation>Najwyżej dziesięć rzeczy do zabawy.</translation>
        </message>
        <message>
            <source>At most two more things that it is for, none of them twice.</source>
            <translation>Najwyżej dwa dalsze cele, żaden dwa razy.</translation>
        </message>
        <message>
            <source>August</source>
            <translation>sierpień</translation>
        </message>
        <message>
            <source>Awaiting confirmation</source>
            <translation>Czeka na potwierdzenie</translation>
        </message>
        <message>
            <source>Away from home</source>
            <translation>Poza domem</translation>
        </message>
        <message>
            <source>Away from steady: %1.</source>
            <translation>Dalej od „równo”: %1.</translation>
        </message>
        <message>
            <source>Ball: %1 mm across.</source>
            <translation>Kula: średnica %1 mm.</translation>
        </message>
        <message>
            <source>Balloon</source>
            <translation>Balon</translation>
        </message>
        <message>
            <source>Because of %1: ask your therapist first.</source>
            <translation>Z powodu %1: najpierw zapytaj swojego terapeutę.</translation>
        </message>
        <message>
            <source>Because somebody puts things in the mouth.</source>
            <translation>Bo ktoś wkłada rzeczy do ust.</translation>
        </message>
        <message>
            <source>Before another child has it, clean: %1.</source>
            <translation>Zanim dostanie je inne dziecko, wyczyść: %1.</translation>
        </message>
        <message>
            <source>Before another child has it, clean: %1. Replace: %2.</source>
            <translation>Zanim dostanie je inne dziecko, wyczyść: %1. Wymień: %2.</translation>
        </message>
        <message>
            <source>Before another child has it, replace: %1.</source>
            <translation>Zanim dostanie je inne dziecko, wymień: %1.</translation>
        </message>
        <message>
            <source>Before bed: five minutes to play?</source>
            <translation>Przed snem: pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>Before the count</source>
            <translation>Przed liczeniem</translation>
        </message>
        <message>
            <source>Better at another time of day</source>
            <translation>Lepiej o innej porze dnia</translation>
        </message>
        <message>
            <source>Better in a quieter place</source>
            <translation>Lepiej w cichszym miejscu</translation>
        </message>
        <message>
            <source>Block: %1 by %2 by %3 mm.</source>
            <translation>Klocek: %1 na %2 na %3 mm.</translation>
        </message>
        <message>
            <source>Box %1</source>
            <translation>Pudełko %1</translation>
        </message>
        <message>
            <source>Box %1 holds %2, which is not among the items. Add it there first.</source>
            <translation>W pudełku %1 jest %2, ale nie ma tego na liście rzeczy. Najpierw dopisz to tam.</translation>
        </message>
        <message>
            <source>Box %1 lists %2 twice. Keep one line.</source>
            <translation>Pudełko %1 dwa razy wymienia: %2. Zostaw jeden wiersz.</translation>
        </message>
        <message>
            <source>Box %1, %2: 1 to %3 pieces.</source>
            <translation>Pudełko %1, %2: od 1 do %3 sztuk.</translation>
        </message>
        <message>
            <source>Box: %1</source>
            <translation>Pudełko: %1</translation>
        </message>
        <message>
            <source>Boxes</source>
            <translation>Pudełka</translation>
        </message>
        <message>
            <source>Boxes that wait: %1. As asked for up to %2.</source>
            <translation>Czekające pudełka: %1. Prośby do %2.</translation>
        </message>
        <message>
            <source>Boxes with lot %1: %2. Ask for each of them back, or for the thing.</source>
            <translation>Pudełka z serią %1: %2. Poproś o zwrot każdego albo samej rzeczy.</translation>
        </message>
        <message>
            <source>Boxes: %1</source>
            <translation>Pudełka: %1</translation>
        </message>
        <message>
            <source>Breath</source>
            <translation>Oddech</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>Arkusz budowy zestawów</translation>
        </message>
        <message>
            <source>Busy can be happy. Start beside, use few words, go slower than feels natural.</source>
            <translation>Żywo może znaczyć wesoło. Zacznij obok, mów mało, rób wszystko wolniej, niż się chce.</translation>
        </message>
        <message>
            <source>By a list of their own</source>
            <translation>Według własnej listy</translation>
        </message>
        <message>
            <source>By its measures: %1.</source>
            <translation>Z wymiarów: %1.</translation>
        </message>
        <message>
            <source>Call %1</source>
            <translation>Dzwoń: %1</translation>
        </message>
        <message>
            <source>Call the emergency number or the poison line now, even if your child seems well.</source>
            <translation>Dzwoń teraz na numer alarmowy albo pod numer przy zatruciu, nawet jeśli dziecko wygląda dobrze.</translation>
        </message>
        <message>
            <source>Call the poison line, %1</source>
            <translation>Dzwoń pod numer przy zatruciu, %1</translation>
        </message>
        <message>
            <source>Call your local emergency number.</source>
            <translation>Dzwoń na miejscowy numer alarmowy.</translation>
        </message>
        <message>
            <source>Call your local emergency number: %1.</source>
            <translation>Dzwoń na miejscowy numer alarmowy: %1.</translation>
        </message>
        <message>
            <source>Came back from %1: %2.</source>
            <translation>Wróciło od: %1, %2.</translation>
        </message>
        <message>
            <source>Can stick over a small child's nose and mouth: no %1 near an under-three.</source>
            <translation>Może przywrzeć do nosa i ust małego dziecka, nie przy dziecku poniżej trzech lat: %1.</translation>
        </message>
        <message>
            <source>Cannot cough, cry, speak or breathe, or will not wake: that is an emergency. Call now.</source>
            <translation>Nie może kaszleć, płakać, mówić lub oddychać albo nie daje się obudzić: to nagły przypadek. Dzwoń teraz.</translation>
        </message>
        <message>
            <source>Card %1 of %2</source>
            <translation>Karta %1 z %2</translation>
        </message>
        <message>
            <source>Check the handful: a button battery can look like a coin. Count out and back.</source>
            <translation>Przejrzyj garść: bateria guzikowa może wyglądać jak moneta. Odlicz i przelicz z powrotem.</translation>
        </message>
        <message>
            <source>Choose a day to look at it again.</source>
            <translation>Wybierz dzień, kiedy znów na to spojrzycie.</translation>
        </message>
        <message>
            <source>Choose how it is played: at least one way to sit, and nobody stands with what is sharp or in a mouth.</source>
            <translation>Wybierz, jak się bawić: przynajmniej jeden sposób siedzenia; z tym, co ostre lub w ustach, nikt nie stoi.</translation>
        </message>
        <message>
            <source>Choose one or two things that it is for.</source>
            <translation>Wybierz jeden lub dwa cele.</translation>
        </message>
        <message>
            <source>Choose the step that is how it is today.</source>
            <translation>Wybierz poziom, który jest taki jak dziś.</translation>
        </message>
        <message>
            <source>Clean</source>
            <translation>Wyczyść</translation>
        </message>
        <message>
            <source>Clear floor</source>
            <translation>Wolna podłoga</translation>
        </message>
        <message>
            <source>Clear the floor first.</source>
            <translation>Najpierw zrób miejsce na podłodze.</translation>
        </message>
        <message>
            <source>Cling film</source>
            <translation>Folia spożywcza</translation>
        </message>
        <message>
            <source>Cloth</source>
            <translation>Tkanina</translation>
        </message>
        <message>
            <source>Clouds</source>
            <translation>Chmury</translation>
        </message>
        <message>
            <source>Clouds in the way. That's fine.</source>
            <translation>Zasłaniają chmury. To w porządku.</translation>
        </message>
        <message>
            <source>Coins</source>
            <translation>Monety</translation>
        </message>
        <message>
            <source>Comes off: %1.</source>
            <translation>Odchodzi: %1.</translation>
        </message>
        <message>
            <source>Complete, by what was noted.</source>
            <translation>Kompletne, według tego, co zapisano.</translation>
        </message>
        <message>
            <source>Cord</source>
            <translation>Sznurówka</translation>
        </message>
        <message>
            <source>Cord: %1 mm long, %2 mm thick.</source>
            <translation>Sznurek: długość %1 mm, grubość %2 mm.</translation>
        </message>
        <message>
            <source>Coughing hard? Let them go on coughing, and stay with them.</source>
            <translation>Mocno kaszle? Pozwól kaszleć dalej i bądź przy dziecku.</translation>
        </message>
        <message>
            <source>Count everything home. The lid comes last.</source>
            <translation>Policz wszystko do środka. Wieczko na końcu.</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>Policzone</translation>
        </message>
        <message>
            <source>Counted in</source>
            <translation>Doliczone</translation>
        </message>
        <message>
            <source>Days are written as year, month, day. In a table, words that begin with =, +, - or @ have an apostrophe before them, so that no spreadsheet takes them for a sum.</source>
            <translation>Daty to rok, miesiąc, dzień. W tabelach słowa, które zaczynają się od =, +, - albo @, mają przed sobą apostrof, żeby arkusz nie wziął ich za działanie.</translation>
        </message>
        <message>
            <source>December</source>
            <translation>grudzień</translation>
        </message>
        <message>
            <source>Disc: %1 mm across, %2 mm thick.</source>
            <translation>Krążek: średnica %1 mm, grubość %2 mm.</translation>
        </message>
        <message>
            <source>Disinfect it as your local rules say. Let it dry in the air.</source>
            <translation>Zdezynfekuj to według miejscowych zasad. Niech wyschnie na powietrzu.</translation>
        </message>
        <message>
            <source>Do not feel about in the mouth.</source>
            <translation>Nie szukaj palcami po omacku w ustach.</translation>
        </message>
        <message>
            <source>Dough</source>
            <translation>Ciastolina</translation>
        </message>
        <message>
            <source>Dough is for hands, not for mouths.</source>
            <translation>Ciastolina jest do rąk, nie do buzi.</translation>
        </message>
        <message>
            <source>EN 71-1</source>
            <translation>EN 71-1</translation>
        </message>
        <message numerus="yes">
            <source>Each evening left open takes %1 days of its time.</source>
            <translation>
                <numerusform>Każdy wieczór bez zamknięcia skraca czas o %1 dzień.</numerusform>
                <numerusform>Każdy wieczór bez zamknięcia skraca czas o %1 dni.</numerusform>
                <numerusform>Każdy wieczór bez zamknięcia skraca czas o %1 dni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Each evening left open takes one day of its time.</source>
            <translation>Każdy wieczór bez zamknięcia skraca czas o jeden dzień.</translation>
        </message>
        <message>
            <source>Each line changes something else.</source>
            <translation>Każda linijka zmienia coś innego.</translation>
        </message>
        <message>
            <source>Each piece counts its share of the price of its pack. Spares and what is left over are not in it: nobody pays these sums, and they do not add up to the one above.</source>
            <translation>Każda sztuka liczy się częścią ceny swojej paczki. Zapas i to, co zostaje, się nie liczą: tych kwot nikt nie płaci i nie sumują się one do tej powyżej.</translation>
        </message>
        <message>
            <source>Each step but one needs a drawing of its own.</source>
            <translation>Każdy krok oprócz jednego potrzebuje własnego rysunku.</translation>
        </message>
        <message>
            <source>Easy to start with</source>
            <translation>Łatwa na początek</translation>
        </message>
        <message>
            <source>Egg shape: %1 by %2 by %3 mm.</source>
            <translation>Kształt jajka: %1 na %2 na %3 mm.</translation>
        </message>
        <message>
            <source>Essential oil</source>
            <translation>Olejek eteryczny</translation>
        </message>
        <message>
            <source>Every kite does all of these.</source>
            <translation>Każdy latawiec robi to wszystko.</translation>
        </message>
        <message>
            <source>Every part that comes off needs a name.</source>
            <translation>Każda część, która odpada, musi mieć nazwę.</translation>
        </message>
        <message>
            <source>Every step needs words.</source>
            <translation>Każdy krok potrzebuje słów.</translation>
        </message>
        <message>
            <source>Everything in it was counted on %1 or later.</source>
            <translation>Wszystko policzono %1 albo później.</translation>
        </message>
        <message>
            <source>Everything shows all there is, and what each one needs.</source>
            <translation>„Wszystko” pokazuje każdą zabawę i to, czego która potrzebuje.</translation>
        </message>
        <message>
            <source>Family or carer</source>
            <translation>Rodzina lub opiekun</translation>
        </message>
        <message>
            <source>February</source>
            <translation>luty</translation>
        </message>
        <message>
            <source>Feel the rim first, and tape it.</source>
            <translation>Najpierw obmacaj brzeg i zaklej go taśmą.</translation>
        </message>
        <message>
            <source>Film this large goes into no box, unless it is 0.038 mm thick or full of holes, and without a string to pull it shut.</source>
            <translation>Tak duża folia nie trafia do pudełka, chyba że ma 0.038 mm grubości albo jest pełna dziurek i nie ma sznurka do zaciągania.</translation>
        </message>
        <message>
            <source>Fine. You can offer it again another day.</source>
            <translation>Dobrze. Możesz zaproponować to innego dnia.</translation>
        </message>
        <message>
            <source>First count the %1 home: %2 of %3.</source>
            <translation>Najpierw odlicz na miejsce: %1, %2 z %3.</translation>
        </message>
        <message>
            <source>First look at each child's hands and mouth.</source>
            <translation>Najpierw obejrzyj ręce i buzię każdego dziecka.</translation>
        </message>
        <message>
            <source>Five minutes to play?</source>
            <translation>Pięć minut na zabawę?</translation>
        </message>
        <message>
            <source>Floor checked, not found</source>
            <translation>Podłoga sprawdzona, nie ma</translation>
        </message>
        <message>
            <source>Flying steady</source>
            <translation>Leci równo</translation>
        </message>
        <message>
            <source>Flying steady. Comfy and ready.</source>
            <translation>Leci równo. Wygodnie mu, jest gotowy.</translation>
        </message>
        <message>
            <source>Foam</source>
            <translation>Pianka</translation>
        </message>
        <message>
            <source>Foil</source>
            <translation>Folia</translation>
        </message>
        <message>
            <source>Fold sharp edges in. Collect every scrap.</source>
            <translation>Zagnij ostre brzegi do środka. Zbierz każdy skrawek.</translation>
        </message>
        <message>
            <source>Follow your child's idea if it is better than ours.</source>
            <translation>Idź za pomysłem dziecka, jeśli jest lepszy od naszego.</translation>
        </message>
        <message>
            <source>Follow your local rules and your therapist.</source>
            <translation>Trzymaj się miejscowych zasad i wskazówek swojego terapeuty.</translation>
        </message>
        <message>
            <source>Food</source>
            <translation>Jedzenie</translation>
        </message>
        <message>
            <source>Food traces</source>
            <translation>Ślady jedzenia</translation>
        </message>
        <message>
            <source>For %1</source>
            <translation>Dla: %1</translation>
        </message>
        <message>
            <source>For %1, with everybody of this home in the room. Made on %2. Print it again when anything at home changes.</source>
            <translation>Dla: %1, gdy w pokoju są wszyscy z tego domu. Zrobione %2. Wydrukuj od nowa, gdy w domu coś się zmieni.</translation>
        </message>
        <message>
            <source>For a change: %1</source>
            <translation>Dla odmiany: %1</translation>
        </message>
        <message>
            <source>For a goal.</source>
            <translation>Ze względu na cel.</translation>
        </message>
        <message>
            <source>For a resting kite</source>
            <translation>Dla latawca, który odpoczywa</translation>
        </message>
        <message>
            <source>For a steady kite</source>
            <translation>Dla latawca, który leci równo</translation>
        </message>
        <message>
            <source>For a tugging kite</source>
            <translation>Dla latawca, który się szarpie</translation>
        </message>
        <message>
            <source>For an allergy.</source>
            <translation>Z powodu alergii.</translation>
        </message>
        <message>
            <source>For one of your goals</source>
            <translation>Do jednego z waszych celów</translation>
        </message>
        <message>
            <source>For the age.</source>
            <translation>Ze względu na wiek.</translation>
        </message>
        <message>
            <source>For the hand.</source>
            <translation>Ze względu na rękę.</translation>
        </message>
        <message>
            <source>For this child only. Wash hands before and after.</source>
            <translation>Tylko dla tego dziecka. Umyj ręce przed zabawą i po niej.</translation>
        </message>
        <message>
            <source>For this home.</source>
            <translation>Ze względu na ten dom.</translation>
        </message>
        <message>
            <source>Fork</source>
            <translation>Widelec</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Znalezione</translation>
        </message>
        <message>
            <source>Found it, or a question?</source>
            <translation>Znalezione albo pytanie?</translation>
        </message>
        <message>
            <source>Found own way</source>
            <translation>Własny sposób</translation>
        </message>
        <message>
            <source>Friday</source>
            <translation>piątek</translation>
        </message>
        <message>
            <source>From %1 and a half years on</source>
            <translation>Od %1 i pół roku</translation>
        </message>
        <message>
            <source>From %1 months on</source>
            <translation>Od %1 miesięcy</translation>
        </message>
        <message>
            <source>From %1 years on</source>
            <translation>Od %1 lat</translation>
        </message>
        <message>
            <source>Glitter</source>
            <translation>Brokat</translation>
        </message>
        <message>
            <source>Goal review: %1.</source>
            <translation>Przegląd celu: %1.</translation>
        </message>
        <message>
            <source>Goal: %1</source>
            <translation>Cel: %1</translation>
        </message>
        <message>
            <source>Goals, in the family's words</source>
            <translation>Cele, słowami rodziny</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Ubyło</translation>
        </message>
        <message>
            <source>Good until %1.</source>
            <translation>Dobre do: %1.</translation>
        </message>
        <message>
            <source>Guest for a few days</source>
            <translation>Gość na kilka dni</translation>
        </message>
        <message>
            <source>Hands wiped before they touch eyes or mouth. The can stays with you.</source>
            <translation>Wytrzyj ręce, zanim dotkną oczu lub ust. Puszka zostaje u ciebie.</translation>
        </message>
        <message>
            <source>Has waited its turn</source>
            <translation>Czekała na swoją kolej</translation>
        </message>
        <message>
            <source>Hollow: %1 mm across inside, %2 mm deep.</source>
            <translation>Wgłębienie: %1 mm w środku, głębokość %2 mm.</translation>
        </message>
        <message>
            <source>Home sheet: %1 does not live here</source>
            <translation>Karta domu: %1 tu nie mieszka</translation>
        </message>
        <message>
            <source>Home sheet: %1 does not tire fast</source>
            <translation>Karta domu: %1 nie męczy się szybko</translation>
        </message>
        <message>
            <source>Home sheet: %1 eats food only</source>
            <translation>Karta domu: %1 je tylko jedzenie</translation>
        </message>
        <message>
            <source>Home sheet: %1 eats what is no food</source>
            <translation>Karta domu: %1 zjada to, co nie jest jedzeniem</translation>
        </message>
        <message>
            <source>Home sheet: %1 lives here</source>
            <translation>Karta domu: %1 tu mieszka</translation>
        </message>
        <message>
            <source>Home sheet: %1 puts nothing in the mouth</source>
            <translation>Karta domu: %1 nie bierze niczego do buzi</translation>
        </message>
        <message>
            <source>Home sheet: %1 puts things in the mouth</source>
            <translation>Karta domu: %1 bierze rzeczy do buzi</translation>
        </message>
        <message>
            <source>Home sheet: %1 tires fast</source>
            <translation>Karta domu: %1 szybko się męczy</translation>
        </message>
        <message>
            <source>Home sheet: a dog or a cat here</source>
            <translation>Karta domu: jest tu pies albo kot</translation>
        </message>
        <message>
            <source>Home sheet: a high place for the box</source>
            <translation>Karta domu: jest wysokie miejsce na pudełko</translation>
        </message>
        <message>
            <source>Home sheet: a wheat allergy here</source>
            <translation>Karta domu: jest tu alergia na pszenicę</translation>
        </message>
        <message>
            <source>Home sheet: coeliac disease here</source>
            <translation>Karta domu: jest tu celiakia</translation>
        </message>
        <message>
            <source>Home sheet: does not like firm touch</source>
            <translation>Karta domu: nie lubi mocnego dotyku</translation>
        </message>
        <message>
            <source>Home sheet: emergency number</source>
            <translation>Karta domu: numer alarmowy</translation>
        </message>
        <message>
            <source>Home sheet: latex is a risk here</source>
            <translation>Karta domu: lateks jest tu zagrożeniem</translation>
        </message>
        <message>
            <source>Home sheet: latex is no risk here</source>
            <translation>Karta domu: lateks nie jest tu zagrożeniem</translation>
        </message>
        <message>
            <source>Home sheet: latex may stay</source>
            <translation>Karta domu: lateks może zostać</translation>
        </message>
        <message>
            <source>Home sheet: latex must stay away</source>
            <translation>Karta domu: lateksu nie może tu być</translation>
        </message>
        <message>
            <source>Home sheet: likes firm touch</source>
            <translation>Karta domu: lubi mocny dotyk</translation>
        </message>
        <message>
            <source>Home sheet: no coeliac disease here</source>
            <translation>Karta domu: nie ma tu celiakii</translation>
        </message>
        <message>
            <source>Home sheet: no dog and no cat here</source>
            <translation>Karta domu: nie ma tu psa ani kota</translation>
        </message>
        <message>
            <source>Home sheet: no high place for the box</source>
            <translation>Karta domu: nie ma wysokiego miejsca na pudełko</translation>
        </message>
        <message>
            <source>Home sheet: no wheat allergy here</source>
            <translation>Karta domu: nie ma tu alergii na pszenicę</translation>
        </message>
        <message>
            <source>Home sheet: poison line</source>
            <translation>Karta domu: numer przy zatruciu</translation>
        </message>
        <message>
            <source>Home sheet: something said of %1</source>
            <translation>Karta domu: coś zapisano (dotyczy: %1)</translation>
        </message>
        <message>
            <source>Home sheet: something said of the home</source>
            <translation>Karta domu: coś zapisano o domu</translation>
        </message>
        <message>
            <source>Hot glue</source>
            <translation>Klej na gorąco</translation>
        </message>
        <message>
            <source>How it felt to %1. What %1 shows with the kite stays at home.</source>
            <translation>Jak się z tym czuje %1. To, co %1 pokazuje latawcem, zostaje w domu.</translation>
        </message>
        <message>
            <source>How many came?</source>
            <translation>Ile przyszło?</translation>
        </message>
        <message>
            <source>I need a grown-up</source>
            <translation>Potrzebuję dorosłego</translation>
        </message>
        <message>
            <source>If it grows</source>
            <translation>Gdy rośnie</translation>
        </message>
        <message>
            <source>If it was swallowed: call the emergency number or the poison line now, even if your child seems well.</source>
            <translation>Jeśli zostało połknięte: dzwoń teraz na numer alarmowy albo pod numer przy zatruciu, nawet jeśli dziecko wygląda dobrze.</translation>
        </message>
        <message>
            <source>In a mouth %1, says %2.</source>
            <translation>W buzi %1, mówi %2.</translation>
        </message>
        <message>
            <source>In its place: %1, asked for.</source>
            <translation>Zamiast tego: %1, jest prośba.</translation>
        </message>
        <message>
            <source>In its place: %1.</source>
            <translation>Zamiast tego: %1.</translation>
        </message>
        <message>
            <source>In the bag</source>
            <translation>W worku</translation>
        </message>
        <message>
            <source>In the same room as %1, watching.</source>
            <translation>W tym samym pokoju co dziecko (%1), patrz na nie.</translation>
        </message>
        <message>
            <source>In, by whom</source>
            <translation>W środku, kto</translation>
        </message>
        <message>
            <source>In, says %1.</source>
            <translation>W środku, mówi %1.</translation>
        </message>
        <message>
            <source>In, says %1. Looked over by %2.</source>
            <translation>W środku, mówi %1. Sprawdza %2.</translation>
        </message>
        <message>
            <source>It can be loud, and it is quiet time now.</source>
            <translation>Może być głośno, a teraz ma być cicho.</translation>
        </message>
        <message>
            <source>It can be loud. Stop when anyone covers their ears.</source>
            <translation>Może być głośno. Przestań, gdy ktoś zakrywa uszy.</translation>
        </message>
        <message>
            <source>It can be washed with soap, rinsed and dried.</source>
            <translation>Można to umyć mydłem, opłukać i wysuszyć.</translation>
        </message>
        <message>
            <source>It can come from latex, food or dough. Say what was touched or eaten.</source>
            <translation>Powodem może być lateks, jedzenie albo ciastolina. Powiedz, co było dotykane lub zjedzone.</translation>
        </message>
        <message>
            <source>It cannot be made clean. Throw it away.</source>
            <translation>Nie da się tego wyczyścić. Wyrzuć.</translation>
        </message>
        <message>
            <source>It cannot be washed: once it was in a mouth it is thrown away, or stays with one child.</source>
            <translation>Nie można tego umyć: po wzięciu do ust trzeba wyrzucić albo zostaje przy jednym dziecku.</translation>
        </message>
        <message>
            <source>It is not locked: whoever opens it can read all of it, and it tells of a child's health. Delete it when you need it no more.</source>
            <translation>Nie jest zamknięty: kto go otworzy, przeczyta wszystko, a mowa w nim o zdrowiu dziecka. Usuń go, gdy nie będzie już potrzebny.</translation>
        </message>
        <message>
            <source>It is still in the bag.</source>
            <translation>Dalej jest w worku.</translation>
        </message>
        <message>
            <source>It is still resting.</source>
            <translation>Dalej odpoczywa.</translation>
        </message>
        <message>
            <source>It is still steady.</source>
            <translation>Dalej leci równo.</translation>
        </message>
        <message>
            <source>It is still tugging.</source>
            <translation>Dalej się szarpie.</translation>
        </message>
        <message>
            <source>It is taken up again</source>
            <translation>Wracamy do niego</translation>
        </message>
        <message>
            <source>It keeps: no limit is known.</source>
            <translation>Trzyma się: żadna granica nie jest znana.</translation>
        </message>
        <message>
            <source>It matters less now</source>
            <translation>Teraz jest mniej ważny</translation>
        </message>
        <message>
            <source>It may run out before the next round.</source>
            <translation>Może się skończyć przed następną rundą.</translation>
        </message>
        <message>
            <source>It may stick over a small child's nose and mouth.</source>
            <translation>Może przywrzeć do nosa i ust małego dziecka.</translation>
        </message>
        <message>
            <source>It must not be packed as it is written. Change its list first.</source>
            <translation>Tak, jak jest zapisane, nie wolno tego pakować. Najpierw zmień listę.</translation>
        </message>
        <message>
            <source>It needs %1, and fewer are left: %2.</source>
            <translation>Potrzeba %1, a zostało mniej: %2.</translation>
        </message>
        <message>
            <source>It needs a name, of at most 80 letters.</source>
            <translation>Potrzebna jest nazwa, najwyżej 80 liter.</translation>
        </message>
        <message>
            <source>It needs two to four steps.</source>
            <translation>Potrzebne są dwa do czterech kroków.</translation>
        </message>
        <message>
            <source>It probably runs out before the next round.</source>
            <translation>Pewnie skończy się przed następną rundą.</translation>
        </message>
        <message>
            <source>It smells, and strong smells are avoided here.</source>
            <translation>To pachnie, a tu unika się mocnych zapachów.</translation>
        </message>
        <message>
            <source>It smells. Stop if skin, eyes or breath do not like it.</source>
            <translation>To pachnie. Przestań, jeśli skóra, oczy lub oddech tego nie lubią.</translation>
        </message>
        <message>
            <source>It uses touch, and nobody has said that touch is liked here.</source>
            <translation>Jest w tym dotyk, a nikt nie powiedział, że dotyk jest tu lubiany.</translation>
        </message>
        <message>
            <source>It was in a mouth. Wash it first: %1.</source>
            <translation>Było w buzi. Najpierw umyj: %1.</translation>
        </message>
        <message>
            <source>It works: the phones can leave and fetch there what they share.</source>
            <translation>Działa: telefony mogą tam zostawiać i stamtąd brać to, co wspólne.</translation>
        </message>
        <message>
            <source>Item</source>
            <translation>Rzecz</translation>
        </message>
        <message>
            <source>Its loop: %1 mm round.</source>
            <translation>Pętla: obwód %1 mm.</translation>
        </message>
        <message>
            <source>Its words have been changed. What was said of earlier words stays with them.</source>
            <translation>Słowa celu zmieniono. To, co powiedziano o wcześniejszych, zostaje przy nich.</translation>
        </message>
        <message>
            <source>January</source>
            <translation>styczeń</translation>
        </message>
        <message>
            <source>July</source>
            <translation>lipiec</translation>
        </message>
        <message>
            <source>June</source>
            <translation>czerwiec</translation>
        </message>
        <message>
            <source>Keep %1 and %2 away until found.</source>
            <translation>Dzieci (%1 i %2) trzymaj z daleka, aż wszystko się znajdzie.</translation>
        </message>
        <message>
            <source>Keep %1 away until found.</source>
            <translation>Dziecko (%1) trzymaj z daleka, aż wszystko się znajdzie.</translation>
        </message>
        <message>
            <source>Keep %1, %2 and all other small children away until found.</source>
            <translation>%1, %2 i wszystkie inne małe dzieci trzymaj z daleka, aż wszystko się znajdzie.</translation>
        </message>
        <message>
            <source>Keep it in the box. We type it in at the next visit.</source>
            <translation>Trzymaj w pudełku. Przepiszemy to przy następnej wizycie.</translation>
        </message>
        <message>
            <source>Keep small children away until found.</source>
            <translation>Małe dzieci trzymaj z daleka, aż wszystko się znajdzie.</translation>
        </message>
        <message>
            <source>Keep the box out of %1's reach.</source>
            <translation>Trzymaj pudełko poza zasięgiem dziecka (%1).</translation>
        </message>
        <message>
            <source>Keep the box out of reach of %1 and %2.</source>
            <translation>Trzymaj pudełko poza zasięgiem dzieci (%1 i %2).</translation>
        </message>
        <message>
            <source>Keep the box out of reach of %1, %2 and all other small children.</source>
            <translation>Trzymaj pudełko poza zasięgiem dzieci: %1, %2 i wszystkich innych małych dzieci.</translation>
        </message>
        <message>
            <source>Keep the box out of reach of small children.</source>
            <translation>Trzymaj pudełko poza zasięgiem małych dzieci.</translation>
        </message>
        <message>
            <source>Keep them with the box, and hand them on with it.</source>
            <translation>Trzymaj je przy pudełku i przekaż razem z nim.</translation>
        </message>
        <message>
            <source>Keep this folder safe</source>
            <translation>Pilnuj tego folderu</translation>
        </message>
        <message>
            <source>Kite in the bag. That's fine.</source>
            <translation>Latawiec w worku. To w porządku.</translation>
        </message>
        <message>
            <source>Known from before</source>
            <translation>Znana</translation>
        </message>
        <message>
            <source>Latex</source>
            <translation>Lateks</translation>
        </message>
        <message>
            <source>Latex must stay away, says %1, %2.</source>
            <translation>Lateks musi zniknąć z domu, mówi %1, %2.</translation>
        </message>
        <message>
            <source>Learn first aid from a trained instructor.</source>
            <translation>Naucz się pierwszej pomocy u wyszkolonego instruktora.</translation>
        </message>
        <message numerus="yes">
            <source>Left open %1 times.</source>
            <translation>
                <numerusform>Zostało otwarte %1 raz.</numerusform>
                <numerusform>Zostało otwarte %1 razy.</numerusform>
                <numerusform>Zostało otwarte %1 razy.</numerusform>
            </translation>
        </message>
        <message>
            <source>Left open once.</source>
            <translation>Zostało otwarte jeden raz.</translation>
        </message>
        <message>
            <source>Left open twice.</source>
            <translation>Zostało otwarte dwa razy.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <translation>Pominięte: %1.</translation>
        </message>
        <message>
            <source>Left over</source>
            <translation>Zostaje</translation>
        </message>
        <message>
            <source>Left-handed scissors only.</source>
            <translation>Tylko nożyczki dla leworęcznych.</translation>
        </message>
        <message>
            <source>Less than we expect</source>
            <translation>Mniej, niż oczekujemy</translation>
        </message>
        <message>
            <source>Lid list %1, from %2</source>
            <translation>Lista z wieczka %1, od %2</translation>
        </message>
        <message>
            <source>Lidlark cannot find %1. Nothing was changed. Check the name, then try again.</source>
            <translation>Lidlark nie znajduje: %1. Nic się nie zmieniło. Sprawdź nazwę i spróbuj znowu.</translation>
        </message>
        <message>
            <source>Lifting</source>
            <translation>Podnoszenie</translation>
        </message>
        <message>
            <source>Light things, two hands, close to the body.</source>
            <translation>Lekkie rzeczy, dwie ręce, blisko ciała.</translation>
        </message>
        <message>
            <source>Look for nicks first. An adult holds it. Never near a face, a neck or a door handle.</source>
            <translation>Najpierw poszukaj nacięć. Taśmę trzyma dorosły. Nigdy blisko twarzy, szyi ani klamki.</translation>
        </message>
        <message>
            <source>Look now: table, floor, clothes, dough.</source>
            <translation>Szukaj teraz: stół, podłoga, ubranie, ciastolina.</translation>
        </message>
        <message>
            <source>Look now: table, floor, clothes, under the chairs.</source>
            <translation>Szukaj teraz: stół, podłoga, ubranie, pod krzesłami.</translation>
        </message>
        <message>
            <source>Looked at %1.</source>
            <translation>Obejrzane %1.</translation>
        </message>
        <message>
            <source>Looked at before every use.</source>
            <translation>Oglądane przed każdym użyciem.</translation>
        </message>
        <message numerus="yes">
            <source>Looked at every %1 days.</source>
            <translation>
                <numerusform>Oglądane co %1 dzień.</numerusform>
                <numerusform>Oglądane co %1 dni.</numerusform>
                <numerusform>Oglądane co %1 dni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Looked at every day.</source>
            <translation>Oglądane codziennie.</translation>
        </message>
        <message>
            <source>Made of latex: not in a home where anyone must avoid it.</source>
            <translation>Z lateksu: nie w domu, w którym ktoś musi go unikać.</translation>
        </message>
        <message>
            <source>March</source>
            <translation>marzec</translation>
        </message>
        <message>
            <source>May</source>
            <translation>maj</translation>
        </message>
        <message>
            <source>Me</source>
            <translation>Ja</translation>
        </message>
        <message>
            <source>Monday</source>
            <translation>poniedziałek</translation>
        </message>
        <message>
            <source>More fits when it need not be quiet.</source>
            <translation>Więcej pasuje, gdy nie musi być cicho.</translation>
        </message>
        <message>
            <source>More fits when the box is filled up again.</source>
            <translation>Więcej pasuje, gdy pudełko jest znów pełne.</translation>
        </message>
        <message>
            <source>More fits when the box is here.</source>
            <translation>Więcej pasuje, gdy pudełko jest tutaj.</translation>
        </message>
        <message>
            <source>More fits when the floor has been looked over.</source>
            <translation>Więcej pasuje, gdy podłoga jest sprawdzona.</translation>
        </message>
        <message>
            <source>More fits when the open questions on the home sheet are answered.</source>
            <translation>Więcej pasuje, gdy jest odpowiedź na otwarte pytania w karcie domu.</translation>
        </message>
        <message>
            <source>More fits when you can sit right beside. Tap the names to say so.</source>
            <translation>Więcej pasuje, gdy możesz siedzieć tuż obok. Stuknij imiona, żeby to powiedzieć.</translation>
        </message>
        <message>
            <source>More fits with fewer small children in the room. Tap the names to say who is here.</source>
            <translation>Więcej pasuje, gdy w pokoju jest mniej małych dzieci. Stuknij imiona, żeby powiedzieć, kto tu jest.</translation>
        </message>
        <message>
            <source>More than one of these is new here.</source>
            <translation>Więcej niż jedna jest tu nowa.</translation>
        </message>
        <message>
            <source>More than one of these makes a mess.</source>
            <translation>Więcej niż jedna robi bałagan.</translation>
        </message>
        <message>
            <source>More than we expect</source>
            <translation>Więcej, niż oczekujemy</translation>
        </message>
        <message>
            <source>Mostly our guess: %1 went in %2.</source>
            <translation>To głównie domysł. Przez %2 ubyło: %1.</translation>
        </message>
        <message>
            <source>Much less than we expect</source>
            <translation>Dużo mniej, niż oczekujemy</translation>
        </message>
        <message>
            <source>Much more than we expect</source>
            <translation>Dużo więcej, niż oczekujemy</translation>
        </message>
        <message>
            <source>Need</source>
            <translation>Potrzeba</translation>
        </message>
        <message>
            <source>Needed help</source>
            <translation>Z pomocą</translation>
        </message>
        <message>
            <source>Needs no table</source>
            <translation>Nie potrzeba stołu</translation>
        </message>
        <message>
            <source>Needs someone in the same room.</source>
            <translation>Potrzebny ktoś w tym samym pokoju.</translation>
        </message>
        <message>
            <source>Needs someone right beside.</source>
            <translation>Potrzebny ktoś tuż obok.</translation>
        </message>
        <message>
            <source>Needs someone within arm's reach.</source>
            <translation>Potrzebny ktoś na wyciągnięcie ręki.</translation>
        </message>
        <message>
            <source>Needs stock</source>
            <translation>Trzeba uzupełnić</translation>
        </message>
        <message>
            <source>Never on a finger, a wrist or a neck. Pluck away from faces.</source>
            <translation>Nigdy na palcu, nadgarstku ani szyi. Szarp struny z dala od twarzy.</translation>
        </message>
        <message>
            <source>Never over a face or round a neck. Arms stay free.</source>
            <translation>Nigdy na twarz ani wokół szyi. Ręce zostają wolne.</translation>
        </message>
        <message>
            <source>Never round a neck or a wrist. Straight back into the lid bag.</source>
            <translation>Nigdy wokół szyi ani nadgarstka. Od razu z powrotem do woreczka w wieczku.</translation>
        </message>
        <message>
            <source>New. %1</source>
            <translation>Nowa. %1</translation>
        </message>
        <message>
            <source>No %1 in this box.</source>
            <translation>W tym pudełku tego nie ma: %1.</translation>
        </message>
        <message>
            <source>No %1 left in the box.</source>
            <translation>W pudełku już nie ma: %1.</translation>
        </message>
        <message>
            <source>No box holds lot %1, as far as lots were written down.</source>
            <translation>Żadne pudełko nie ma serii %1, o ile serie zapisano.</translation>
        </message>
        <message>
            <source>No box of this build waits to be packed.</source>
            <translation>Żadne pudełko tej partii nie czeka na pakowanie.</translation>
        </message>
        <message>
            <source>No change: %1.</source>
            <translation>Bez zmiany: %1.</translation>
        </message>
        <message>
            <source>No code can be read in this picture. Take it again, nearer and straight on, or type the nine words.</source>
            <translation>Na tym zdjęciu nie da się odczytać kodu. Zrób je znowu, z bliska i na wprost, albo wpisz dziewięć słów.</translation>
        </message>
        <message>
            <source>No code is waiting, or its ten minutes are over. Make a new one.</source>
            <translation>Żaden kod nie czeka albo minęło jego dziesięć minut. Zrób nowy.</translation>
        </message>
        <message>
            <source>No folder can be made there. Ask whoever looks after it for the right to write.</source>
            <translation>Nie można tam założyć folderu. Poproś opiekuna tego miejsca o prawo zapisu.</translation>
        </message>
        <message>
            <source>No latex in this box.</source>
            <translation>W tym pudełku bez lateksu.</translation>
        </message>
        <message>
            <source>No line promises a result.</source>
            <translation>Żadna linijka nie obiecuje efektu.</translation>
        </message>
        <message>
            <source>No step needs a colour.</source>
            <translation>Żaden krok nie wymaga koloru.</translation>
        </message>
        <message>
            <source>No wheat in this box.</source>
            <translation>W tym pudełku bez pszenicy.</translation>
        </message>
        <message>
            <source>Nobody answers there now. Check the address and the network, then try again.</source>
            <translation>Nikt tam teraz nie odpowiada. Sprawdź adres i sieć, potem spróbuj znowu.</translation>
        </message>
        <message>
            <source>Nobody has received it yet.</source>
            <translation>Nikt jej jeszcze nie dostał.</translation>
        </message>
        <message>
            <source>Nobody has said how old your child is, so only a few are offered.</source>
            <translation>Nikt nie powiedział, ile lat ma twoje dziecko, więc propozycji jest niewiele.</translation>
        </message>
        <message>
            <source>Nobody has used the code yet.</source>
            <translation>Nikt jeszcze nie użył kodu.</translation>
        </message>
        <message>
            <source>Nobody waits for anything.</source>
            <translation>Nikt na nic nie czeka.</translation>
        </message>
        <message>
            <source>Noise</source>
            <translation>Hałas</translation>
        </message>
        <message>
            <source>None has gone in %1 so far. The rest is our guess.</source>
            <translation>Przez %1 nic dotąd nie ubyło. Reszta to nasz domysł.</translation>
        </message>
        <message numerus="yes">
            <source>None in the other %1 weeks.</source>
            <translation>
                <numerusform>W pozostałym %1 tygodniu nic.</numerusform>
                <numerusform>W pozostałych %1 tygodniach nic.</numerusform>
                <numerusform>W pozostałych %1 tygodniach nic.</numerusform>
            </translation>
        </message>
        <message>
            <source>None in the other week.</source>
            <translation>W drugim tygodniu nic.</translation>
        </message>
        <message>
            <source>None is agreed yet.</source>
            <translation>Jeszcze żadnego nie ustalono.</translation>
        </message>
        <message>
            <source>None left: %1.</source>
            <translation>Nic nie zostało: %1.</translation>
        </message>
        <message>
            <source>None of these is an old favourite yet.</source>
            <translation>Żadna z nich nie jest jeszcze ulubiona.</translation>
        </message>
        <message>
            <source>Not before %1 and a half years, because of %2.</source>
            <translation>Nie przed ukończeniem %1 i pół roku, z powodu %2.</translation>
        </message>
        <message numerus="yes">
            <source>Not before %1 months, because of %2.</source>
            <translation>
                <numerusform>Nie przed ukończeniem %1 miesiąca, z powodu %2.</numerusform>
                <numerusform>Nie przed ukończeniem %1 miesięcy, z powodu %2.</numerusform>
                <numerusform>Nie przed ukończeniem %1 miesięcy, z powodu %2.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not before %1 years, because of %2.</source>
            <translation>
                <numerusform>Nie przed ukończeniem %1 roku, z powodu %2.</numerusform>
                <numerusform>Nie przed ukończeniem %1 lat, z powodu %2.</numerusform>
                <numerusform>Nie przed ukończeniem %1 lat, z powodu %2.</numerusform>
            </translation>
        </message>
        <message>
            <source>Not everything in it has been counted yet.</source>
            <translation>Nie wszystko zostało jeszcze policzone.</translation>
        </message>
        <message>
            <source>Not for a while</source>
            <translation>Dawno nie było</translation>
        </message>
        <message>
            <source>Not handed over yet.</source>
            <translation>Jeszcze nie przekazane.</translation>
        </message>
        <message>
            <source>Not in this home: %1.</source>
            <translation>Nie w tym domu: %1.</translation>
        </message>
        <message>
            <source>Not opened yet.</source>
            <translation>Jeszcze nieotwarte.</translation>
        </message>
        <message>
            <source>Not reckoned, for it has no price: %1.</source>
            <translation>Nie liczone, bo bez ceny: %1.</translation>
        </message>
        <message>
            <source>Not sure how many: %1.</source>
            <translation>Nie wiadomo, ile: %1.</translation>
        </message>
        <message>
            <source>Not told here. It is the family's own.</source>
            <translation>Tego tu nie ma. To sprawa rodziny.</translation>
        </message>
        <message>
            <source>Not while skin is sore or broken.</source>
            <translation>Nie wtedy, gdy skóra jest obolała lub uszkodzona.</translation>
        </message>
        <message>
            <source>Nothing can be taken away from the place again. Choose another.</source>
            <translation>Nic nie da się stamtąd usunąć. Wybierz inne miejsce.</translation>
        </message>
        <message>
            <source>Nothing can be written there: perhaps only reading is allowed.</source>
            <translation>Nic nie da się tam zapisać: może wolno tylko czytać.</translation>
        </message>
        <message>
            <source>Nothing from the box is needed. Quiet ones come first.</source>
            <translation>Z pudełka nic nie trzeba. Najpierw ciche zabawy.</translation>
        </message>
        <message>
            <source>Nothing is written down.</source>
            <translation>Nic nie zapisano.</translation>
        </message>
        <message>
            <source>Nothing on this page grades anybody.</source>
            <translation>Nic na tej stronie nikogo nie ocenia.</translation>
        </message>
        <message>
            <source>Nothing stands on this list now. Everything, in the app, says why.</source>
            <translation>Na tej liście teraz nic nie ma. Dlaczego, mówi w aplikacji Wszystko.</translation>
        </message>
        <message>
            <source>November</source>
            <translation>listopad</translation>
        </message>
        <message>
            <source>Now it is in the bag.</source>
            <translation>Teraz jest w worku.</translation>
        </message>
        <message>
            <source>Now it is resting.</source>
            <translation>Teraz odpoczywa.</translation>
        </message>
        <message>
            <source>Now it is steady.</source>
            <translation>Teraz leci równo.</translation>
        </message>
        <message>
            <source>Now it is tugging.</source>
            <translation>Teraz się szarpie.</translation>
        </message>
        <message>
            <source>Now there are clouds in the way.</source>
            <translation>Teraz zasłaniają chmury.</translation>
        </message>
        <message>
            <source>October</source>
            <translation>październik</translation>
        </message>
        <message>
            <source>Offered from %1 and a half years.</source>
            <translation>Proponowana od %1 i pół roku.</translation>
        </message>
        <message numerus="yes">
            <source>Offered from %1 months.</source>
            <translation>
                <numerusform>Proponowana od %1 miesiąca.</numerusform>
                <numerusform>Proponowana od %1 miesięcy.</numerusform>
                <numerusform>Proponowana od %1 miesięcy.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Offered from %1 years.</source>
            <translation>
                <numerusform>Proponowana od %1 roku.</numerusform>
                <numerusform>Proponowana od %1 lat.</numerusform>
                <numerusform>Proponowana od %1 lat.</numerusform>
            </translation>
        </message>
        <message>
            <source>On %1 %2 your child was not born yet. Nothing was changed. Check the phone's date and the birth month.</source>
            <translation>%1 %2 twojego dziecka jeszcze nie było na świecie. Nic się nie zmieniło. Sprawdź datę w telefonie i miesiąc urodzin.</translation>
        </message>
        <message>
            <source>On %1 your child was not born yet. Nothing was changed. Check the phone's date and the birth month.</source>
            <translation>Wtedy (%1) twojego dziecka jeszcze nie było na świecie. Nic się nie zmieniło. Sprawdź datę w telefonie i miesiąc urodzin.</translation>
        </message>
        <message>
            <source>On its way</source>
            <translation>W drodze</translation>
        </message>
        <message>
            <source>On the shelf</source>
            <translation>Na półce</translation>
        </message>
        <message>
            <source>On the way: %1.</source>
            <translation>W drodze: %1.</translation>
        </message>
        <message>
            <source>On this phone only</source>
            <translation>Tylko na tym telefonie</translation>
        </message>
        <message>
            <source>On this phone only so far</source>
            <translation>Na razie tylko na tym telefonie</translation>
        </message>
        <message>
            <source>On which day an activity was last offered. Lidlark keeps it so that each gets its turn, and shows it to nobody.</source>
            <translation>Tego, kiedy zabawa była ostatnio proponowana. Lidlark pamięta to, żeby na każdą przyszła kolej, i nikomu tego nie pokazuje.</translation>
        </message>
        <message>
            <source>One %1 is missing.</source>
            <translation>Brakuje jednej sztuki: %1.</translation>
        </message>
        <message>
            <source>One box more: nothing more to pay. What lies in the box is worth %1.</source>
            <translation>Jedno pudełko więcej: nic się nie dopłaca. To, co w nim leży, jest warte %1.</translation>
        </message>
        <message>
            <source>One box more: the till asks for %1 more. What lies in the box is worth %2.</source>
            <translation>Jedno pudełko więcej: przy kasie dopłacisz %1. To, co w nim leży, jest warte %2.</translation>
        </message>
        <message>
            <source>One child</source>
            <translation>Jedno dziecko</translation>
        </message>
        <message>
            <source>One family's file cannot be read: %1. It was left as it is. The others are as they were.</source>
            <translation>Nie da się odczytać pliku jednej rodziny: %1. Zostaje taki, jaki był. Pozostałe są takie, jakie były.</translation>
        </message>
        <message>
            <source>One less noise. One less thing on the table. Lid on what you are not using.</source>
            <translation>O jeden hałas mniej. O jedną rzecz na stole mniej. Przykryj to, czego nie używasz.</translation>
        </message>
        <message>
            <source>One line of plain text only.</source>
            <translation>Tylko jeden wiersz zwykłego tekstu.</translation>
        </message>
        <message>
            <source>One note waits on this phone</source>
            <translation>Na tym telefonie czeka jeden zapis</translation>
        </message>
        <message>
            <source>One of the items has no name of its own. Say which item it is.</source>
            <translation>Jedna z rzeczy nie ma własnej nazwy. Powiedz, co to za rzecz.</translation>
        </message>
        <message>
            <source>One page of the catalogue cannot be read and is left out: %1. All else is here.</source>
            <translation>Jednej strony katalogu nie da się odczytać i jest pominięta: %1. Wszystko inne jest.</translation>
        </message>
        <message>
            <source>One small piece is not found.</source>
            <translation>Jednej małej części nie znaleziono.</translation>
        </message>
        <message>
            <source>One week on paper</source>
            <translation>Tydzień na papierze</translation>
        </message>
        <message>
            <source>Only a phone of a parent or the therapist, and one that is in the crew, can do that. Nothing was changed.</source>
            <translation>Może to zrobić tylko telefon rodzica albo terapeuty, który jest w załodze. Nic się nie zmieniło.</translation>
        </message>
        <message>
            <source>Only an adult pumps it up or handles it flat. Pick up every piece if it bursts.</source>
            <translation>Balon pompuje tylko dorosły i tylko dorosły bierze do rąk pusty. Jeśli pęknie, podnieś każdy kawałek.</translation>
        </message>
        <message>
            <source>Only the therapist's phone does that. Nothing was changed.</source>
            <translation>To robi tylko telefon terapeutki. Nic się nie zmieniło.</translation>
        </message>
        <message>
            <source>Open pegs away from skin. Throw away a broken spring.</source>
            <translation>Otwieraj klamerki z dala od skóry. Wyrzuć zepsutą sprężynkę.</translation>
        </message>
        <message>
            <source>Opened %1.</source>
            <translation>Otwarte %1.</translation>
        </message>
        <message>
            <source>Opened, it probably stays good %1 to %2 weeks.</source>
            <translation>Po otwarciu pewnie wytrzyma %1 do %2 tygodni.</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good %1 weeks or longer.</source>
            <translation>
                <numerusform>Po otwarciu pewnie wytrzyma %1 tydzień lub dłużej.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma %1 tygodnie lub dłużej.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma %1 tygodni lub dłużej.</numerusform>
            </translation>
        </message>
        <message>
            <source>Opened, it probably stays good a week or longer.</source>
            <translation>Po otwarciu pewnie wytrzyma tydzień lub dłużej.</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good about %1 weeks.</source>
            <translation>
                <numerusform>Po otwarciu pewnie wytrzyma około %1 tygodnia.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma około %1 tygodni.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma około %1 tygodni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Opened, it probably stays good about a week.</source>
            <translation>Po otwarciu pewnie wytrzyma około tygodnia.</translation>
        </message>
        <message>
            <source>Opened, it probably stays good less than a week.</source>
            <translation>Po otwarciu pewnie wytrzyma mniej niż tydzień.</translation>
        </message>
        <message>
            <source>Opened, it probably stays good longer than a year.</source>
            <translation>Po otwarciu pewnie wytrzyma dłużej niż rok.</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good up to %1 weeks.</source>
            <translation>
                <numerusform>Po otwarciu pewnie wytrzyma najwyżej %1 tydzień.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma najwyżej %1 tygodnie.</numerusform>
                <numerusform>Po otwarciu pewnie wytrzyma najwyżej %1 tygodni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>Lista pakowania</translation>
        </message>
        <message>
            <source>Packed</source>
            <translation>Spakowane</translation>
        </message>
        <message>
            <source>Packed by</source>
            <translation>Pakuje</translation>
        </message>
        <message>
            <source>Packed for %1, not handed over yet.</source>
            <translation>Spakowane dla: %1, jeszcze nie przekazane.</translation>
        </message>
        <message>
            <source>Packed, and nobody's yet.</source>
            <translation>Spakowane, jeszcze niczyje.</translation>
        </message>
        <message>
            <source>Packs to buy</source>
            <translation>Paczki do kupienia</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Strona %1 z %2</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Paper pieces stay over 6 cm where anyone mouths things.</source>
            <translation>Tam, gdzie ktoś bierze rzeczy do buzi, kawałki papieru mają ponad 6 cm.</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>Rodzic</translation>
        </message>
        <message>
            <source>Past its date. Throw it away.</source>
            <translation>Po terminie. Wyrzuć.</translation>
        </message>
        <message>
            <source>Past steady to the other side: %1.</source>
            <translation>Przez „równo” na drugą stronę: %1.</translation>
        </message>
        <message>
            <source>Pegs</source>
            <translation>Klamerki</translation>
        </message>
        <message>
            <source>Pets</source>
            <translation>Zwierzęta</translation>
        </message>
        <message numerus="yes">
            <source>Pieces of %1 balloons are missing.</source>
            <translation>
                <numerusform>Brakuje kawałków %1 balonu.</numerusform>
                <numerusform>Brakuje kawałków %1 balonów.</numerusform>
                <numerusform>Brakuje kawałków %1 balonów.</numerusform>
            </translation>
        </message>
        <message>
            <source>Pieces of a balloon are missing.</source>
            <translation>Brakuje kawałków balonu.</translation>
        </message>
        <message>
            <source>Play takes three to eight minutes.</source>
            <translation>Zabawa trwa trzy do ośmiu minut.</translation>
        </message>
        <message>
            <source>Plays that take it: %1. All can be made without it.</source>
            <translation>Zabawy, które jej używają: %1. Wszystkie udadzą się bez niej.</translation>
        </message>
        <message>
            <source>Plays that take it: %1. Lost without it: %2.</source>
            <translation>Zabawy, które jej używają: %1. Bez niej przepadają: %2.</translation>
        </message>
        <message>
            <source>Practises %1</source>
            <translation>Ćwiczy: %1</translation>
        </message>
        <message>
            <source>Price: Lidlark reckons in hundredths, and %1 has none. It cannot keep this price.</source>
            <translation>Cena: Lidlark liczy w setnych, a %1 ich nie ma. Nie może zachować tej ceny.</translation>
        </message>
        <message>
            <source>Price: at most %1 for a pack.</source>
            <translation>Cena: najwyżej %1 za opakowanie.</translation>
        </message>
        <message>
            <source>Price: digits and one dot only, such as %1.</source>
            <translation>Cena: tylko cyfry i kropka, na przykład %1.</translation>
        </message>
        <message>
            <source>Price: nothing below zero.</source>
            <translation>Cena: nic poniżej zera.</translation>
        </message>
        <message>
            <source>Price: two digits after the dot, such as %1.</source>
            <translation>Cena: dwie cyfry po kropce, na przykład %1.</translation>
        </message>
        <message>
            <source>Probably lasts %1 to %2 weeks.</source>
            <translation>Starczy pewnie na %1 do %2 tygodni.</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts %1 weeks or longer.</source>
            <translation>
                <numerusform>Starczy pewnie na %1 tydzień lub dłużej.</numerusform>
                <numerusform>Starczy pewnie na %1 tygodnie lub dłużej.</numerusform>
                <numerusform>Starczy pewnie na %1 tygodni lub dłużej.</numerusform>
            </translation>
        </message>
        <message>
            <source>Probably lasts a week or longer.</source>
            <translation>Starczy pewnie na tydzień lub dłużej.</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts about %1 weeks.</source>
            <translation>
                <numerusform>Starczy pewnie na około %1 tydzień.</numerusform>
                <numerusform>Starczy pewnie na około %1 tygodnie.</numerusform>
                <numerusform>Starczy pewnie na około %1 tygodni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Probably lasts about a week.</source>
            <translation>Starczy pewnie na około tydzień.</translation>
        </message>
        <message>
            <source>Probably lasts less than a week.</source>
            <translation>Starczy pewnie na mniej niż tydzień.</translation>
        </message>
        <message>
            <source>Probably lasts longer than a year.</source>
            <translation>Starczy pewnie na dłużej niż rok.</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts up to %1 weeks.</source>
            <translation>
                <numerusform>Starczy pewnie najwyżej na %1 tydzień.</numerusform>
                <numerusform>Starczy pewnie najwyżej na %1 tygodnie.</numerusform>
                <numerusform>Starczy pewnie najwyżej na %1 tygodni.</numerusform>
            </translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>Cicho</translation>
        </message>
        <message>
            <source>Quiet can be just quiet. If your child seems unwell or unusually hard to wake, skip play and get advice.</source>
            <translation>Cicho może znaczyć tylko cicho. Jeśli dziecko wygląda na chore albo niezwykle trudno je obudzić, zostaw zabawę i zasięgnij porady.</translation>
        </message>
        <message>
            <source>Ready.</source>
            <translation>Gotowe.</translation>
        </message>
        <message>
            <source>Received by %1, %2.</source>
            <translation>Ma ją %1, od: %2.</translation>
        </message>
        <message>
            <source>Replace</source>
            <translation>Wymień</translation>
        </message>
        <message>
            <source>Replaced</source>
            <translation>Wymienione</translation>
        </message>
        <message numerus="yes">
            <source>Replaced %1 days after it came.</source>
            <translation>
                <numerusform>Wymieniane %1 dzień po przyjściu.</numerusform>
                <numerusform>Wymieniane %1 dni po przyjściu.</numerusform>
                <numerusform>Wymieniane %1 dni po przyjściu.</numerusform>
            </translation>
        </message>
        <message>
            <source>Replaced one day after it came.</source>
            <translation>Wymieniane jeden dzień po przyjściu.</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>Odpoczywa</translation>
        </message>
        <message>
            <source>Resting. Slow, floppy, or just quiet.</source>
            <translation>Odpoczywa. Wolny, miękki albo po prostu cichy.</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>Runda uzupełnień</translation>
        </message>
        <message>
            <source>Review due</source>
            <translation>Czas na przegląd celu</translation>
        </message>
        <message>
            <source>Revision %1, sent %2.</source>
            <translation>Wersja %1, wysłana: %2.</translation>
        </message>
        <message>
            <source>Right beside</source>
            <translation>Tuż obok</translation>
        </message>
        <message>
            <source>Right beside %1, hand within touch.</source>
            <translation>Tuż obok dziecka (%1), ręka tak blisko, by móc dotknąć.</translation>
        </message>
        <message>
            <source>Rim</source>
            <translation>Brzeg</translation>
        </message>
        <message>
            <source>Rinse the eye gently with lukewarm water, at least 15 minutes.</source>
            <translation>Płucz oko delikatnie letnią wodą, co najmniej 15 minut.</translation>
        </message>
        <message>
            <source>Rod: %1 mm across, %2 mm long.</source>
            <translation>Walec: średnica %1 mm, długość %2 mm.</translation>
        </message>
        <message>
            <source>Rubber bands</source>
            <translation>Gumki recepturki</translation>
        </message>
        <message>
            <source>Running low: %1.</source>
            <translation>Kończy się: %1.</translation>
        </message>
        <message>
            <source>Safety note</source>
            <translation>Uwaga o bezpieczeństwie</translation>
        </message>
        <message>
            <source>Salty dough can poison dogs and cats: lid on, up high.</source>
            <translation>Słona ciastolina może zatruć psa i kota: pokrywka na miejscu, pojemnik wysoko.</translation>
        </message>
        <message>
            <source>Same one, or %1?</source>
            <translation>Ta sama sztuka czy %1?</translation>
        </message>
        <message>
            <source>Same room</source>
            <translation>Ten sam pokój</translation>
        </message>
        <message>
            <source>Saturday</source>
            <translation>sobota</translation>
        </message>
        <message>
            <source>Say about how many go in how many days.</source>
            <translation>Podaj, ile mniej więcej ubywa przez ile dni.</translation>
        </message>
        <message>
            <source>Say from which age on. What it is played with sets the earliest.</source>
            <translation>Podaj, od jakiego wieku. Najniższy wynika z rzeczy do zabawy.</translation>
        </message>
        <message>
            <source>Say how large one piece is, or that it is soft.</source>
            <translation>Podaj, jak duża jest jedna sztuka, albo że jest miękka.</translation>
        </message>
        <message>
            <source>Say in a few words what the adult changes, easier and harder each in its own way.</source>
            <translation>Powiedz w kilku słowach, co zmienia dorosły: łatwiej i trudniej, każde po swojemu.</translation>
        </message>
        <message>
            <source>Say in at most 25 words what the adult does first.</source>
            <translation>Powiedz najwyżej w 25 słowach, co dorosły robi najpierw.</translation>
        </message>
        <message>
            <source>Say in at most twelve words what the child hears.</source>
            <translation>Powiedz najwyżej w dwunastu słowach, co słyszy dziecko.</translation>
        </message>
        <message>
            <source>Say in one or two lines what to watch for.</source>
            <translation>Powiedz w jednej lub dwóch linijkach, na co zwracać uwagę.</translation>
        </message>
        <message>
            <source>Say in one or two lines when to stop.</source>
            <translation>Powiedz w jednej lub dwóch linijkach, kiedy przerwać.</translation>
        </message>
        <message>
            <source>Say what can be seen at this step.</source>
            <translation>Napisz, co można zobaczyć na tym poziomie.</translation>
        </message>
        <message>
            <source>Say what one of them is called, in at most 80 letters.</source>
            <translation>Podaj, jak nazywa się jedna sztuka, najwyżej 80 liter.</translation>
        </message>
        <message>
            <source>Say what the child will do, in the family's words.</source>
            <translation>Powiedzcie słowami rodziny, co dziecko będzie robić.</translation>
        </message>
        <message>
            <source>Say what to look for, and when it is looked at.</source>
            <translation>Podaj, czego szukać i kiedy się to ogląda.</translation>
        </message>
        <message>
            <source>Say what you saw: no praise for obeying, and no exclamation mark.</source>
            <translation>Powiedz, co było widać: bez pochwał za posłuszeństwo i bez wykrzyknika.</translation>
        </message>
        <message>
            <source>Say what you see: &quot;Your kite is really tugging.&quot; Then wait.</source>
            <translation>Powiedz, co widzisz: „Twój latawiec mocno się szarpie”. Potem czekaj.</translation>
        </message>
        <message>
            <source>Say whether it can be washed.</source>
            <translation>Podaj, czy da się to umyć.</translation>
        </message>
        <message>
            <source>Say whether it holds anything that never goes into a box. What does stays out.</source>
            <translation>Podaj, czy jest w tym coś, co nigdy nie trafia do pudełka. Jeśli jest, zostaje poza pudełkiem.</translation>
        </message>
        <message>
            <source>Say whether small pieces come of what is cut or torn.</source>
            <translation>Powiedz, czy z cięcia lub darcia powstają małe kawałki.</translation>
        </message>
        <message>
            <source>Say why not earlier.</source>
            <translation>Powiedz, dlaczego nie wcześniej.</translation>
        </message>
        <message>
            <source>Scissors</source>
            <translation>Nożyczki</translation>
        </message>
        <message>
            <source>Second look, by whom</source>
            <translation>Sprawdzone, kto</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Widziane</translation>
        </message>
        <message>
            <source>Sees the box and the home sheet. No plays of others, no kites, no goals.</source>
            <translation>Widzi pudełko i kartę domu. Bez zabaw innych, bez latawców, bez celów.</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet and the goals. No plays, no kites.</source>
            <translation>Widzi pudełko, kartę domu i cele. Bez zabaw, bez latawców.</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet, the plays and the kites. No goals.</source>
            <translation>Widzi pudełko, kartę domu, zabawy i latawce. Bez celów.</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet, the plays, the kites and the goals. Lets others in.</source>
            <translation>Widzi pudełko, kartę domu, zabawy, latawce i cele. Wpuszcza innych.</translation>
        </message>
        <message>
            <source>September</source>
            <translation>wrzesień</translation>
        </message>
        <message>
            <source>Set it aside.</source>
            <translation>Odłóż to na bok.</translation>
        </message>
        <message>
            <source>Shall we look together: floppy, steady or wiggly? Or just start.</source>
            <translation>Popatrzymy razem: miękki, równy czy wiercipięta? Albo po prostu zacznijmy.</translation>
        </message>
        <message>
            <source>Shared %1</source>
            <translation>Udostępnione %1</translation>
        </message>
        <message>
            <source>Shared at %1</source>
            <translation>Udostępnione o %1</translation>
        </message>
        <message>
            <source>Shared on %1</source>
            <translation>Udostępnione %1</translation>
        </message>
        <message>
            <source>Shared yesterday</source>
            <translation>Udostępnione wczoraj</translation>
        </message>
        <message>
            <source>Shorter: sentences of at most 20 words, steps of at most 40, and words that a ten-year-old reads.</source>
            <translation>Krócej: zdania do 20 słów, kroki do 40, i słowa, które czyta dziesięciolatek.</translation>
        </message>
        <message>
            <source>Sitting down to cut. Closed, blades in the fist, when carried.</source>
            <translation>Tnie się na siedząco. Przy noszeniu zamknięte, ostrza w pięści.</translation>
        </message>
        <message>
            <source>Sitting the whole time, never walking with it. One straw, one child.</source>
            <translation>Cały czas na siedząco, nigdy nie chodzić ze słomką. Jedna słomka, jedno dziecko.</translation>
        </message>
        <message>
            <source>Slow pull together. Or four kite breaths: string out, string in.</source>
            <translation>Wolne ciągnięcie razem. Albo cztery oddechy latawca: rozwiń sznurek, zwiń sznurek.</translation>
        </message>
        <message>
            <source>Slowly, both ways. Stop if pale, giddy or sick.</source>
            <translation>Wolno, w obie strony. Przestań, gdy dziecko jest blade, kręci mu się w głowie lub jest mu niedobrze.</translation>
        </message>
        <message>
            <source>Small parts</source>
            <translation>Małe części</translation>
        </message>
        <message>
            <source>Small parts: count them out and count them back.</source>
            <translation>Małe części: odlicz je i przelicz z powrotem.</translation>
        </message>
        <message>
            <source>Smell</source>
            <translation>Zapach</translation>
        </message>
        <message>
            <source>So far %1 went in %2.</source>
            <translation>Jak dotąd przez %2 ubyło: %1.</translation>
        </message>
        <message>
            <source>Soap and water</source>
            <translation>Woda z mydłem</translation>
        </message>
        <message>
            <source>Soft: it has no size that means anything.</source>
            <translation>Miękkie: jego wymiar nic nie mówi.</translation>
        </message>
        <message>
            <source>Some of these practise the same thing.</source>
            <translation>Niektóre ćwiczą to samo.</translation>
        </message>
        <message>
            <source>Somebody</source>
            <translation>Ktoś</translation>
        </message>
        <message>
            <source>Somebody at home may have to avoid %1: not with %2.</source>
            <translation>Ktoś w domu może musieć unikać: %1. Nie z tym: %2.</translation>
        </message>
        <message>
            <source>Somebody at home may have to avoid milk: not with %1.</source>
            <translation>Ktoś w domu może musieć unikać mleka. Nie z tym: %1.</translation>
        </message>
        <message>
            <source>Somebody at home must avoid latex, and this uses it.</source>
            <translation>Ktoś w domu musi unikać lateksu, a tu jest potrzebny.</translation>
        </message>
        <message>
            <source>Somebody at home must avoid latex. Out of the house: %1.</source>
            <translation>Ktoś w domu musi unikać lateksu. Poza dom: %1.</translation>
        </message>
        <message>
            <source>Somebody at home must avoid wheat, and this uses it.</source>
            <translation>Ktoś w domu musi unikać pszenicy, a tu jest potrzebna.</translation>
        </message>
        <message>
            <source>Somebody at home must avoid wheat: not with %1.</source>
            <translation>Ktoś w domu musi unikać pszenicy. Nie z tym: %1.</translation>
        </message>
        <message>
            <source>Somebody else</source>
            <translation>Ktoś inny</translation>
        </message>
        <message>
            <source>Somebody else wants to join in</source>
            <translation>Ktoś jeszcze chce się bawić</translation>
        </message>
        <message>
            <source>Somebody here may put things in the mouth: no %1.</source>
            <translation>Ktoś tu może brać rzeczy do buzi: bez %1.</translation>
        </message>
        <message>
            <source>Somebody under three may be here: no %1.</source>
            <translation>Może tu być ktoś poniżej trzech lat: bez %1.</translation>
        </message>
        <message>
            <source>Something answers, but no files can be kept there. Check the address: it is the one for WebDAV, not the one of a page.</source>
            <translation>Coś odpowiada, ale nie można tam trzymać plików. Sprawdź adres: ma to być adres WebDAV, a nie strony.</translation>
        </message>
        <message>
            <source>Something different this week</source>
            <translation>Coś innego w tym tygodniu</translation>
        </message>
        <message>
            <source>Something has to come out again.</source>
            <translation>Coś trzeba jeszcze wyjąć.</translation>
        </message>
        <message>
            <source>Something looks worn</source>
            <translation>Coś wygląda na podniszczone</translation>
        </message>
        <message>
            <source>Something may be in the mouth, nose, ear or throat</source>
            <translation>Coś może być w ustach, nosie, uchu lub gardle</translation>
        </message>
        <message>
            <source>Something new</source>
            <translation>Coś nowego</translation>
        </message>
        <message>
            <source>Something noted</source>
            <translation>Coś zapisano</translation>
        </message>
        <message>
            <source>Something small is lost?</source>
            <translation>Zginęło coś małego?</translation>
        </message>
        <message>
            <source>Something small is still being looked for.</source>
            <translation>Coś małego wciąż jest szukane.</translation>
        </message>
        <message>
            <source>Something splashed in an eye</source>
            <translation>Coś chlapnęło do oka</translation>
        </message>
        <message>
            <source>Something that %1 shared has not arrived here yet.</source>
            <translation>Coś, co udostępnia %1, jeszcze tu nie dotarło.</translation>
        </message>
        <message>
            <source>Something was swallowed</source>
            <translation>Coś zostało połknięte</translation>
        </message>
        <message>
            <source>Spare</source>
            <translation>Zapasowe</translation>
        </message>
        <message>
            <source>Spares</source>
            <translation>Zapas</translation>
        </message>
        <message>
            <source>Spares are 0 to %1 percent.</source>
            <translation>Zapas to od 0 do %1 procent.</translation>
        </message>
        <message>
            <source>Special: somebody else looks over each line.</source>
            <translation>Specjalne: każdą pozycję sprawdza ktoś inny.</translation>
        </message>
        <message>
            <source>Spend</source>
            <translation>Wydatek</translation>
        </message>
        <message>
            <source>Stay beside the water. Empty it before anyone leaves, and dry the floor.</source>
            <translation>Zostań przy wodzie. Wylej ją, zanim ktokolwiek odejdzie, i wytrzyj podłogę.</translation>
        </message>
        <message>
            <source>Stickers</source>
            <translation>Naklejki</translation>
        </message>
        <message>
            <source>Stickers stay out of mouths. Count them back.</source>
            <translation>Naklejki z dala od buzi. Przelicz je z powrotem.</translation>
        </message>
        <message>
            <source>Still to be taken out: %1.</source>
            <translation>Jeszcze do wyjęcia: %1.</translation>
        </message>
        <message>
            <source>Stop the game. Stay near. Games come back later.</source>
            <translation>Przerwij zabawę. Bądź blisko. Zabawy wrócą później.</translation>
        </message>
        <message>
            <source>Stop when %1</source>
            <translation>Przerwij, gdy %1</translation>
        </message>
        <message>
            <source>Stopped early</source>
            <translation>Przerwane wcześniej</translation>
        </message>
        <message>
            <source>Straw</source>
            <translation>Słomka</translation>
        </message>
        <message>
            <source>Stretchy band</source>
            <translation>Taśma do ćwiczeń</translation>
        </message>
        <message>
            <source>Sunday</source>
            <translation>niedziela</translation>
        </message>
        <message>
            <source>Swollen lips or a rash all over: emergency number too.</source>
            <translation>Spuchnięte usta albo wysypka na całym ciele: też dzwoń na numer alarmowy.</translation>
        </message>
        <message>
            <source>Take one of the words below off, and more fits.</source>
            <translation>Odznacz jedno ze słów poniżej, a będzie pasować więcej.</translation>
        </message>
        <message>
            <source>Take out again: %1.</source>
            <translation>Wyjmij z powrotem: %1.</translation>
        </message>
        <message>
            <source>Take these out of the box now. Keep them where no child can reach them, until they are handed back.</source>
            <translation>Wyjmij to teraz z pudełka. Trzymaj tam, gdzie żadne dziecko nie sięgnie, dopóki tego nie oddasz.</translation>
        </message>
        <message>
            <source>Take these out of the house, then wash hands and wipe the table.</source>
            <translation>Wynieś to z domu, potem umyj ręce i wytrzyj stół.</translation>
        </message>
        <message>
            <source>Take these out of the house, then wash hands.</source>
            <translation>Wynieś to z domu, potem umyj ręce.</translation>
        </message>
        <message>
            <source>Taken out of the collection.</source>
            <translation>Usunięta ze zbioru.</translation>
        </message>
        <message>
            <source>Taken out of the house</source>
            <translation>Wyniesione z domu</translation>
        </message>
        <message>
            <source>Thank you for showing me.</source>
            <translation>Dzięki, że mi to pokazujesz.</translation>
        </message>
        <message>
            <source>That does not fit: %1. Nothing was changed. Put it right, then try again.</source>
            <translation>To nie pasuje: %1. Nic się nie zmieniło. Popraw to i spróbuj znowu.</translation>
        </message>
        <message>
            <source>That has to come after the day it is agreed.</source>
            <translation>To musi być po dniu uzgodnienia.</translation>
        </message>
        <message>
            <source>That is a small number, and other things happen in five minutes too.</source>
            <translation>To mała liczba, a w pięć minut dzieją się też inne rzeczy.</translation>
        </message>
        <message>
            <source>That is for the family to say. Nothing was changed. Tell them, and they note it.</source>
            <translation>To może zapisać tylko rodzina. Nic się nie zmieniło. Powiedz rodzinie, a ona to zapisze.</translation>
        </message>
        <message>
            <source>That is too long: at most %1 letters.</source>
            <translation>To za długie: najwyżej tyle liter: %1.</translation>
        </message>
        <message>
            <source>That is very short. Who does what?</source>
            <translation>To bardzo krótkie. Kto co robi?</translation>
        </message>
        <message>
            <source>The activities of Lidlark cannot be read, so nothing can be offered. Install it again. What you wrote down is kept.</source>
            <translation>Nie da się odczytać zabaw Lidlark, więc nie ma czego proponować. Zainstaluj go od nowa. To, co jest zapisane, zostaje.</translation>
        </message>
        <message>
            <source>The box</source>
            <translation>Pudełko</translation>
        </message>
        <message>
            <source>The box has a new lid list: revision %1.</source>
            <translation>Pudełko ma nową listę na wieczko: wersja %1.</translation>
        </message>
        <message>
            <source>The box is %1.</source>
            <translation>Pudełko: %1.</translation>
        </message>
        <message>
            <source>The box is not here.</source>
            <translation>Pudełka tu nie ma.</translation>
        </message>
        <message>
            <source>The cord is thicker than it is long: are the two swapped?</source>
            <translation>Sznurek jest grubszy niż dłuższy: czy liczby się nie zamieniły?</translation>
        </message>
        <message>
            <source>The family</source>
            <translation>Rodzina</translation>
        </message>
        <message>
            <source>The home sheet, the box and what came and went, plays, check-ins, goals, our own ways, notes to oneself, and each thing that was noted.</source>
            <translation>Karta domu, pudełko oraz to, co przyszło i ubyło, zabawy, latawce, cele, nasze sposoby, własne notatki i każda zapisana rzecz.</translation>
        </message>
        <message>
            <source>The list on the lid is out of date: revision %1 holds since %2.</source>
            <translation>Lista na wieczku jest nieaktualna: wersja %1 obowiązuje od: %2.</translation>
        </message>
        <message>
            <source>The name or the password holds a sign that cannot be sent.</source>
            <translation>W nazwie albo haśle jest znak, którego nie da się wysłać.</translation>
        </message>
        <message>
            <source>The name, or a line, is one of ours already: say it another way.</source>
            <translation>Taka nazwa albo linijka już u nas jest: powiedz to inaczej.</translation>
        </message>
        <message>
            <source>The narrow way is wider than the wide one: are the two swapped?</source>
            <translation>Węższy wymiar jest większy od szerszego: czy liczby się nie zamieniły?</translation>
        </message>
        <message>
            <source>The notes to oneself are those of %1. Read them before you hand this folder on.</source>
            <translation>Własne notatki są tej osoby: %1. Przeczytaj je, zanim dasz komuś ten folder.</translation>
        </message>
        <message>
            <source>The parent chooses one activity and reads its caution aloud.</source>
            <translation>Rodzic wybiera jedną zabawę i czyta na głos, na co uważać.</translation>
        </message>
        <message>
            <source>The parent counts everything back in, closes the lid and says where the box lives.</source>
            <translation>Rodzic wlicza wszystko z powrotem, zamyka wieczko i mówi, gdzie pudełko będzie stało.</translation>
        </message>
        <message>
            <source>The parent fills in the home sheet: who lives there, ages, allergies.</source>
            <translation>Rodzic wypełnia kartę domu: kto tam mieszka, wiek, alergie.</translation>
        </message>
        <message>
            <source>The parent makes it easier once and harder once.</source>
            <translation>Rodzic raz ułatwia i raz utrudnia.</translation>
        </message>
        <message>
            <source>The parent opens the box and finds each thing on the lid list.</source>
            <translation>Rodzic otwiera pudełko i znajduje każdą rzecz z listy na wieczku.</translation>
        </message>
        <message>
            <source>The parent plays it with the child. You watch, and your hands stay still.</source>
            <translation>Rodzic bawi się w to z dzieckiem. Ty patrzysz, a twoje ręce odpoczywają.</translation>
        </message>
        <message>
            <source>The phone could not save: the storage is full, or may not be written. Nothing that was kept before is lost. Make some room, then try again.</source>
            <translation>Telefon nie mógł zapisać: pamięć jest pełna albo nie wolno w niej zapisywać. Nic, co było zapisane wcześniej, nie zginęło. Zrób trochę miejsca i spróbuj znowu.</translation>
        </message>
        <message>
            <source>The phone of %1 was copied or set back to a backup. It has to be let in again.</source>
            <translation>Ten telefon został skopiowany albo cofnięty do kopii (%1). Trzeba go wpuścić od nowa.</translation>
        </message>
        <message>
            <source>The place does not open: check the name and the password.</source>
            <translation>Miejsce się nie otwiera: sprawdź nazwę i hasło.</translation>
        </message>
        <message>
            <source>The place is full. Make some room there, or choose another.</source>
            <translation>Miejsce jest pełne. Zrób tam trochę wolnego albo wybierz inne.</translation>
        </message>
        <message>
            <source>The place lets one file push out another, so something could be lost. Choose another.</source>
            <translation>W tym miejscu jeden plik może wyprzeć drugi, więc coś mogłoby zginąć. Wybierz inne.</translation>
        </message>
        <message>
            <source>The question about allergies is still open, so only a few are offered.</source>
            <translation>Pytanie o alergie jest jeszcze otwarte, więc propozycji jest niewiele.</translation>
        </message>
        <message>
            <source>The room</source>
            <translation>Pokój</translation>
        </message>
        <message>
            <source>The same %1</source>
            <translation>Te same %1</translation>
        </message>
        <message>
            <source>The same %1, or %2 in all?</source>
            <translation>Te same %1 czy razem %2?</translation>
        </message>
        <message>
            <source>The same for any battery, a small thing you do not know, foam, or a mouthful of salty dough: call now.</source>
            <translation>Tak samo przy każdej baterii, małej rzeczy, której nie znasz, piance albo kęsie słonej ciastoliny: dzwoń teraz.</translation>
        </message>
        <message>
            <source>The same one</source>
            <translation>Ta sama sztuka</translation>
        </message>
        <message>
            <source>The same ones</source>
            <translation>Te same sztuki</translation>
        </message>
        <message>
            <source>The same ones, or %1 in all?</source>
            <translation>Te same sztuki czy razem %1?</translation>
        </message>
        <message>
            <source>The same words as “%1”. Each step needs its own.</source>
            <translation>Te same słowa co „%1”. Każdy poziom ma mieć własne.</translation>
        </message>
        <message>
            <source>The server cannot show that it is the one it says it is. Nothing was sent to it. Ask whoever looks after it for a valid certificate.</source>
            <translation>Serwer nie umie dowieść, że jest tym, za kogo się podaje. Nic do niego nie wysłano. Poproś jego opiekuna o ważny certyfikat.</translation>
        </message>
        <message>
            <source>The settings of this phone, and other families on it.</source>
            <translation>Ustawień tego telefonu i innych rodzin na nim.</translation>
        </message>
        <message>
            <source>The shared place answered in a way that Lidlark does not understand. Check the address.</source>
            <translation>Wspólne miejsce odpowiedziało w sposób, którego Lidlark nie rozumie. Sprawdź adres.</translation>
        </message>
        <message>
            <source>The shared place cannot be reached now. Nothing is lost; Lidlark tries again later.</source>
            <translation>Wspólne miejsce jest teraz nieosiągalne. Nic nie zginęło; Lidlark spróbuje później.</translation>
        </message>
        <message>
            <source>The shared place cannot show that it is the one it says. Nothing was sent. Check the address, or ask whoever runs it.</source>
            <translation>Wspólne miejsce nie umie dowieść, że jest tym, za co się podaje. Nic nie wysłano. Sprawdź adres albo zapytaj jego opiekuna.</translation>
        </message>
        <message>
            <source>The shared place does not let this phone in. Check the name and the password.</source>
            <translation>Wspólne miejsce nie wpuszcza tego telefonu. Sprawdź nazwę i hasło.</translation>
        </message>
        <message>
            <source>The shared place has lost something that was there. This phone brings its part again.</source>
            <translation>We wspólnym miejscu coś zginęło. Ten telefon przynosi swoją część znowu.</translation>
        </message>
        <message>
            <source>The shared place is busy. Lidlark tries again later.</source>
            <translation>Wspólne miejsce jest zajęte. Lidlark spróbuje później.</translation>
        </message>
        <message>
            <source>The shared place is full. What you noted stays on this phone until there is room.</source>
            <translation>Wspólne miejsce jest pełne. Twoje zapisy zostają na tym telefonie, aż zrobi się wolne.</translation>
        </message>
        <message>
            <source>The shelf has enough.</source>
            <translation>Na półce jest dość.</translation>
        </message>
        <message>
            <source>The therapist</source>
            <translation>Terapeuta</translation>
        </message>
        <message>
            <source>The whole box</source>
            <translation>Całe pudełko</translation>
        </message>
        <message>
            <source>Then call the poison line.</source>
            <translation>Potem dzwoń pod numer przy zatruciu.</translation>
        </message>
        <message>
            <source>Therapist</source>
            <translation>Terapeuta</translation>
        </message>
        <message>
            <source>There are still clouds in the way.</source>
            <translation>Dalej zasłaniają chmury.</translation>
        </message>
        <message>
            <source>There is no box in this build yet.</source>
            <translation>W tej partii nie ma jeszcze pudełka.</translation>
        </message>
        <message>
            <source>There is no shared place yet. Choose one under &quot;Shared place&quot;.</source>
            <translation>Nie ma jeszcze wspólnego miejsca. Wybierz je pod „Wspólne miejsce”.</translation>
        </message>
        <message>
            <source>There is nothing for this sheet at that place. Check the address; an older sheet ends when a new one is made.</source>
            <translation>W tym miejscu nie ma nic dla tej kartki. Sprawdź adres; starsza kartka traci ważność, gdy powstaje nowa.</translation>
        </message>
        <message>
            <source>There were clouds in the way.</source>
            <translation>Zasłaniały chmury.</translation>
        </message>
        <message>
            <source>These are for the other hand. Put them back.</source>
            <translation>Te są na drugą rękę. Odłóż je.</translation>
        </message>
        <message>
            <source>These are nine good words, but one of them is another than was shown. Compare them with the other phone.</source>
            <translation>To dziewięć dobrych słów, ale jedno z nich jest inne niż pokazane. Porównaj je z drugim telefonem.</translation>
        </message>
        <message>
            <source>Think what the container held: does anyone here react to it?</source>
            <translation>Pomyśl, co było w pojemniku: czy ktoś tu na to reaguje?</translation>
        </message>
        <message>
            <source>This address begins with http: anybody on the way could read the password. Use the one with https.</source>
            <translation>Ten adres zaczyna się od http: każdy po drodze mógłby przeczytać hasło. Użyj adresu z https.</translation>
        </message>
        <message>
            <source>This afternoon</source>
            <translation>Dziś po południu</translation>
        </message>
        <message>
            <source>This box has no %1.</source>
            <translation>W tym pudełku nie ma: %1.</translation>
        </message>
        <message>
            <source>This cannot go to a box: %1.</source>
            <translation>To nie może trafić do pudełka: %1.</translation>
        </message>
        <message>
            <source>This evening</source>
            <translation>Dziś wieczorem</translation>
        </message>
        <message>
            <source>This file cannot be opened. Check how it is written, or put in the stick it lies on.</source>
            <translation>Tego pliku nie da się otworzyć. Sprawdź pisownię albo włóż pamięć, na której leży.</translation>
        </message>
        <message>
            <source>This file is damaged or is not a Lidlark store: %1. It was left as it is. Use another file, or ask for a copy from another phone of your crew.</source>
            <translation>Ten plik jest uszkodzony albo nie jest plikiem Lidlark: %1. Zostaje taki, jaki był. Użyj innego pliku albo poproś o kopię z innego telefonu załogi.</translation>
        </message>
        <message>
            <source>This file is damaged or not all there. Ask for it again. Nothing was taken in.</source>
            <translation>Ten plik jest uszkodzony albo niepełny. Poproś o niego jeszcze raz. Nic nie zostało przyjęte.</translation>
        </message>
        <message>
            <source>This file is too large to be one that Lidlark hands over.</source>
            <translation>Ten plik jest za duży na plik przekazywany przez Lidlark.</translation>
        </message>
        <message>
            <source>This folder is not there. Check how it is written, or put in the stick it lies on.</source>
            <translation>Nie ma takiego folderu. Sprawdź pisownię albo włóż pamięć, na której leży.</translation>
        </message>
        <message>
            <source>This game has changed since your therapist's yes. Ask your therapist.</source>
            <translation>Ta zabawa zmieniła się po zgodzie twojego terapeuty. Zapytaj terapeutę.</translation>
        </message>
        <message>
            <source>This home has no %1.</source>
            <translation>W tym domu nie ma: %1.</translation>
        </message>
        <message>
            <source>This is a latex-free home now.</source>
            <translation>To jest teraz dom bez lateksu.</translation>
        </message>
        <message>
            <source>This is a wheat-free home for play now.</source>
            <translation>To jest teraz dom, w którym bawimy się bez pszenicy.</translation>
        </message>
        <message>
            <source>This is no address of a place. It looks like https://example.org/crew, or like a folder of this phone: /home/crew.</source>
            <translation>To nie jest adres miejsca. Wygląda on tak: https://example.org/crew albo jak folder tego telefonu: /home/crew.</translation>
        </message>
        <message>
            <source>This is no file that Lidlark hands over. It was left as it is.</source>
            <translation>Takich plików Lidlark nie przekazuje. Plik zostaje taki, jaki był.</translation>
        </message>
        <message>
            <source>This is the address of a page for people. Copy the one for WebDAV.</source>
            <translation>To adres strony dla ludzi. Skopiuj adres WebDAV.</translation>
        </message>
        <message>
            <source>This item has almost nothing to do in this box: one play takes it.</source>
            <translation>Ta rzecz prawie nie ma w tym pudełku nic do roboty: używa jej jedna zabawa.</translation>
        </message>
        <message>
            <source>This item has nothing to do in this box: no play takes it.</source>
            <translation>Ta rzecz nie ma w tym pudełku nic do roboty: nie używa jej żadna zabawa.</translation>
        </message>
        <message>
            <source>This morning</source>
            <translation>Dziś rano</translation>
        </message>
        <message>
            <source>This phone is not in the crew any more. What it holds stays here; nothing new comes or goes.</source>
            <translation>Ten telefon nie jest już w załodze. To, co na nim jest, zostaje; nic nowego nie przychodzi ani nie wychodzi.</translation>
        </message>
        <message>
            <source>This phone packs, and does not know this child. Hand the box over on the therapist's phone. Nothing was changed.</source>
            <translation>Ten telefon służy do pakowania i nie zna tego dziecka. Przekaż pudełko na telefonie terapeuty. Nic nie zostało zmienione.</translation>
        </message>
        <message>
            <source>This phone was set back to an older copy. It shares nothing until somebody of the crew lets it in again.</source>
            <translation>Ten telefon cofnięto do starszej kopii. Nie udostępnia niczego, dopóki ktoś z załogi nie wpuści go znowu.</translation>
        </message>
        <message>
            <source>This phone's clock shows %1 %2. Set the date, then open Lidlark again. Nothing was changed.</source>
            <translation>Zegar tego telefonu pokazuje %1 %2. Ustaw datę, potem otwórz Lidlark znowu. Nic się nie zmieniło.</translation>
        </message>
        <message>
            <source>This phone's clock shows %1. Set the date, then open Lidlark again. Nothing was changed.</source>
            <translation>Zegar tego telefonu pokazuje: %1. Ustaw datę, potem otwórz Lidlark znowu. Nic się nie zmieniło.</translation>
        </message>
        <message>
            <source>This store comes from another phone. It shares nothing until somebody of the crew lets this phone in.</source>
            <translation>Ten zbiór pochodzi z innego telefonu. Nie udostępnia niczego, dopóki ktoś z załogi nie wpuści tego telefonu.</translation>
        </message>
        <message numerus="yes">
            <source>Thrown away %1 days after it was opened.</source>
            <translation>
                <numerusform>Do wyrzucenia %1 dzień po otwarciu.</numerusform>
                <numerusform>Do wyrzucenia %1 dni po otwarciu.</numerusform>
                <numerusform>Do wyrzucenia %1 dni po otwarciu.</numerusform>
            </translation>
        </message>
        <message>
            <source>Thrown away one day after it was opened.</source>
            <translation>Do wyrzucenia jeden dzień po otwarciu.</translation>
        </message>
        <message>
            <source>Thursday</source>
            <translation>czwartek</translation>
        </message>
        <message>
            <source>To be put right before this sheet can be reckoned:</source>
            <translation>Do poprawienia, zanim da się policzyć ten arkusz:</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Dziś</translation>
        </message>
        <message>
            <source>Today is its last day.</source>
            <translation>Dziś jest ostatni dzień.</translation>
        </message>
        <message>
            <source>Too old, or dried out: %1.</source>
            <translation>Za stare albo wyschło: %1.</translation>
        </message>
        <message>
            <source>Touch</source>
            <translation>Dotyk</translation>
        </message>
        <message>
            <source>Towards steady: %1.</source>
            <translation>Bliżej „równo”: %1.</translation>
        </message>
        <message>
            <source>Toy safety rules of the EU and the UK</source>
            <translation>Przepisy UE i Wielkiej Brytanii o bezpieczeństwie zabawek</translation>
        </message>
        <message>
            <source>Trouble breathing, drooling or pain: call the emergency number.</source>
            <translation>Trudności z oddychaniem, ślinienie się albo ból: dzwoń na numer alarmowy.</translation>
        </message>
        <message>
            <source>Trouble breathing, swelling or rash</source>
            <translation>Trudności z oddychaniem, opuchlizna lub wysypka</translation>
        </message>
        <message>
            <source>Trouble breathing, swelling, fainting: emergency number now.</source>
            <translation>Trudności z oddychaniem, opuchlizna, omdlenie: dzwoń teraz na numer alarmowy.</translation>
        </message>
        <message>
            <source>Tuesday</source>
            <translation>wtorek</translation>
        </message>
        <message>
            <source>Tugging and whirling</source>
            <translation>Szarpie się i wiruje</translation>
        </message>
        <message>
            <source>Tugging and whirling. Wiggly, fizzy, fast.</source>
            <translation>Szarpie się i wiruje. Wierci się, buzuje, pędzi.</translation>
        </message>
        <message>
            <source>Turning</source>
            <translation>Obracanie się</translation>
        </message>
        <message>
            <source>Two boxes have the code %1. Give one of them another.</source>
            <translation>Dwa pudełka mają kod %1. Nadaj jednemu z nich inny.</translation>
        </message>
        <message>
            <source>Two lists were written without knowing of each other. Send one more that says what holds.</source>
            <translation>Powstały dwie listy, które o sobie nie wiedziały. Wyślij jeszcze jedną, która powie, co obowiązuje.</translation>
        </message>
        <message>
            <source>Two notes of one play, about %1.</source>
            <translation>Dwa zapisy jednej zabawy: %1.</translation>
        </message>
        <message>
            <source>Two people have changed this box. Look at its list and keep it again.</source>
            <translation>Dwie osoby zmieniły to pudełko. Sprawdź listę i zapisz ją jeszcze raz.</translation>
        </message>
        <message>
            <source>Two people packed this. See that it is not in twice.</source>
            <translation>Pakowały to dwie osoby. Sprawdź, czy nie leży podwójnie.</translation>
        </message>
        <message>
            <source>Us</source>
            <translation>My</translation>
        </message>
        <message>
            <source>Use it up by tomorrow.</source>
            <translation>Zużyj do jutra.</translation>
        </message>
        <message>
            <source>Use some of it soon</source>
            <translation>Zużyj coś z tego wkrótce</translation>
        </message>
        <message>
            <source>Use the dough soon</source>
            <translation>Zużyj wkrótce ciastolinę</translation>
        </message>
        <message>
            <source>Used no more: %1.</source>
            <translation>Już nieużywane: %1.</translation>
        </message>
        <message>
            <source>Used once, then thrown away.</source>
            <translation>Używane raz, potem do wyrzucenia.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Children under 8 yrs. can choke or suffocate on uninflated or broken balloons. Adult supervision required. Keep uninflated balloons from children. Discard broken balloons at once.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Dzieci poniżej 8 lat mogą się zadławić lub udusić nienadmuchanymi albo pękniętymi balonami. Wymagany nadzór dorosłych. Trzymać nienadmuchane balony z dala od dzieci. Pęknięte balony natychmiast wyrzucić.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Small parts. Not for children under 3 yrs.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Małe części. Nie dla dzieci poniżej 3 lat.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—This toy is a marble. Not for children under 3 yrs.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Ta zabawka to kulka szklana. Nie dla dzieci poniżej 3 lat.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—This toy is a small ball. Not for children under 3 yrs.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Ta zabawka to mała piłka. Nie dla dzieci poniżej 3 lat.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Toy contains a marble. Not for children under 3 yrs.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Zabawka zawiera kulkę szklaną. Nie dla dzieci poniżej 3 lat.</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Toy contains a small ball. Not for children under 3 yrs.</source>
            <translation>OSTRZEŻENIE: RYZYKO ZADŁAWIENIA—Zabawka zawiera małą piłkę. Nie dla dzieci poniżej 3 lat.</translation>
        </message>
        <message>
            <source>Warning! Children under eight years can choke or suffocate on uninflated or broken balloons. Adult supervision required. Keep uninflated balloons from children. Discard broken balloons at once.</source>
            <translation>Ostrzeżenie! Dzieci w wieku poniżej ośmiu lat mogą się zadławić lub udusić nienadmuchanymi albo pękniętymi balonami. Wymagany nadzór dorosłych. Trzymać nienadmuchane balony z dala od dzieci. Pęknięte balony natychmiast wyrzucić.</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Marble.</source>
            <translation>Ostrzeżenie! Nieodpowiednie dla dzieci w wieku poniżej trzech lat. Kulka szklana.</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Small ball.</source>
            <translation>Ostrzeżenie! Nieodpowiednie dla dzieci w wieku poniżej trzech lat. Mała piłka.</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Small parts.</source>
            <translation>Ostrzeżenie! Nieodpowiednie dla dzieci w wieku poniżej trzech lat. Małe części.</translation>
        </message>
        <message>
            <source>Was that before the count, or after?</source>
            <translation>To było przed liczeniem czy po nim?</translation>
        </message>
        <message>
            <source>Wash it with soap and water, and rinse it.</source>
            <translation>Umyj to wodą z mydłem i opłucz.</translation>
        </message>
        <message>
            <source>Washing machine</source>
            <translation>Pralka</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Woda</translation>
        </message>
        <message>
            <source>Water needs an adult right beside. Say so under &quot;Who is here&quot;.</source>
            <translation>Przy wodzie dorosły musi być tuż obok. Zapisz to w „Kto tu jest”.</translation>
        </message>
        <message>
            <source>We agreed on it together</source>
            <translation>Uzgodniliśmy to razem</translation>
        </message>
        <message>
            <source>We have not agreed together since then where it stands.</source>
            <translation>Od tego czasu nie uzgodniliśmy razem, jak jest.</translation>
        </message>
        <message>
            <source>We look at it again on %1.</source>
            <translation>Wracamy do tego: %1.</translation>
        </message>
        <message>
            <source>We reached it</source>
            <translation>Osiągnęliśmy go</translation>
        </message>
        <message>
            <source>Wednesday</source>
            <translation>środa</translation>
        </message>
        <message>
            <source>Week from Monday, %1</source>
            <translation>Tydzień od poniedziałku, %1</translation>
        </message>
        <message>
            <source>What %1 shared does not follow on what was there before. It was not taken in.</source>
            <translation>To, co udostępnia %1, nie pasuje do tego, co było wcześniej. Nie zostało przyjęte.</translation>
        </message>
        <message>
            <source>What another home or another person keeps to themselves: this phone cannot read it.</source>
            <translation>Tego, co inny dom albo inna osoba trzyma dla siebie: ten telefon nie może tego przeczytać.</translation>
        </message>
        <message>
            <source>What cannot be washed stays with one child: it is never issued again.</source>
            <translation>Czego nie da się umyć, zostaje u jednego dziecka: nigdy nie trafia do innego.</translation>
        </message>
        <message>
            <source>What goes out is counted home: write each number in a line, with the lid last.</source>
            <translation>Co wychodzi, liczy się z powrotem: napisz każdą liczbę w linijce, wieczko na końcu.</translation>
        </message>
        <message>
            <source>What has a tick here was in already.</source>
            <translation>Co jest tu odhaczone, już było w środku.</translation>
        </message>
        <message>
            <source>What is in each box</source>
            <translation>Co jest w każdym pudełku</translation>
        </message>
        <message>
            <source>What is in the box today, beyond what was noted.</source>
            <translation>Co jest dziś w pudełku, poza tym, co zapisano.</translation>
        </message>
        <message>
            <source>What is in them</source>
            <translation>Co w nich jest</translation>
        </message>
        <message>
            <source>What is in this folder</source>
            <translation>Co jest w tym folderze</translation>
        </message>
        <message>
            <source>What is not in it</source>
            <translation>Czego w nim nie ma</translation>
        </message>
        <message>
            <source>What is played: not shared</source>
            <translation>Zabawy: nie są dzielone</translation>
        </message>
        <message>
            <source>What is played: shared with the therapist</source>
            <translation>Zabawy: dzielone z terapeutą</translation>
        </message>
        <message>
            <source>What is read there is not what was written. Choose another place.</source>
            <translation>Odczytuje się tam coś innego, niż zapisano. Wybierz inne miejsce.</translation>
        </message>
        <message>
            <source>What is your kite doing now?</source>
            <translation>Co teraz robi twój latawiec?</translation>
        </message>
        <message>
            <source>What is your kite doing?</source>
            <translation>Co robi twój latawiec?</translation>
        </message>
        <message>
            <source>What lies in the place cannot be seen, or not at once. Choose another.</source>
            <translation>Nie widać, co tam leży, albo widać dopiero później. Wybierz inne miejsce.</translation>
        </message>
        <message>
            <source>What stays with the clinic</source>
            <translation>Co zostaje w przychodni</translation>
        </message>
        <message>
            <source>What swells in water</source>
            <translation>Coś, co pęcznieje w wodzie</translation>
        </message>
        <message>
            <source>What the home lends is not counted in the lid.</source>
            <translation>Tego, co pożycza dom, nie liczy się na wieczku.</translation>
        </message>
        <message>
            <source>What was erased, and check-ins from more than 90 days ago.</source>
            <translation>Tego, co usunięto, oraz latawców sprzed ponad 90 dni.</translation>
        </message>
        <message>
            <source>What was played and not written down.</source>
            <translation>W co się bawiono, a czego nie zapisano.</translation>
        </message>
        <message>
            <source>What was played is told as far as the family shares it.</source>
            <translation>O zabawach mówimy tyle, iloma dzieli się rodzina.</translation>
        </message>
        <message>
            <source>What was played is told with the yes of %1, %2.</source>
            <translation>O zabawach mówimy za zgodą: %1, %2.</translation>
        </message>
        <message>
            <source>What was played, and what adults noticed</source>
            <translation>W co się bawiono i co zauważyli dorośli</translation>
        </message>
        <message>
            <source>What was played, and what came of it.</source>
            <translation>W co się bawiono i co z tego wyszło.</translation>
        </message>
        <message>
            <source>What we do not know</source>
            <translation>Czego nie wiemy</translation>
        </message>
        <message>
            <source>What we expect</source>
            <translation>To, czego oczekujemy</translation>
        </message>
        <message>
            <source>What you spend today</source>
            <translation>Ile dziś wydajesz</translation>
        </message>
        <message>
            <source>Wheat</source>
            <translation>Pszenica</translation>
        </message>
        <message>
            <source>Wheat in the dough. Wash hands and wipe the table after.</source>
            <translation>Pszenica w ciastolinie. Potem umyj ręce i wytrzyj stół.</translation>
        </message>
        <message>
            <source>Wheat must stay away, says %1, %2.</source>
            <translation>Pszenica musi zniknąć z domu, mówi %1, %2.</translation>
        </message>
        <message>
            <source>When these words were agreed, on %1: %2</source>
            <translation>Gdy uzgodniono te słowa, %1: %2</translation>
        </message>
        <message>
            <source>Where there are two squares, the second is for somebody else, who looks it over.</source>
            <translation>Gdzie są dwa kwadraty, drugi jest dla kogoś innego, kto sprawdza.</translation>
        </message>
        <message>
            <source>Which count was the last?</source>
            <translation>Które liczenie było ostatnie?</translation>
        </message>
        <message>
            <source>Which is right?</source>
            <translation>Co jest prawdą?</translation>
        </message>
        <message>
            <source>Why a goal has moved or not: growing, school and play all count.</source>
            <translation>Dlaczego cel się przesunął albo nie: liczą się dorastanie, szkoła i zabawa.</translation>
        </message>
        <message>
            <source>Why: %1</source>
            <translation>Dlaczego: %1</translation>
        </message>
        <message>
            <source>Wiped</source>
            <translation>Przetarte</translation>
        </message>
        <message>
            <source>With %1. Handed over %2.</source>
            <translation>U: %1. Przekazane %2.</translation>
        </message>
        <message>
            <source>With a few minutes more, more fits.</source>
            <translation>Gdy jest kilka minut więcej, pasuje więcej.</translation>
        </message>
        <message>
            <source>Within arm's reach of %1.</source>
            <translation>Na wyciągnięcie ręki od dziecka (%1).</translation>
        </message>
        <message>
            <source>Words that go with this box</source>
            <translation>Słowa, które idą z tym pudełkiem</translation>
        </message>
        <message>
            <source>Worn down it cannot be larger than it was.</source>
            <translation>Zużyte nie może być większe niż przedtem.</translation>
        </message>
        <message>
            <source>Worn down, at least:</source>
            <translation>Zużyte, co najmniej:</translation>
        </message>
        <message>
            <source>Worth of each</source>
            <translation>Wartość każdego</translation>
        </message>
        <message>
            <source>Write at least one line that makes it easier.</source>
            <translation>Napisz przynajmniej jedną linijkę, która ułatwia.</translation>
        </message>
        <message>
            <source>Write at least one line that makes it harder.</source>
            <translation>Napisz przynajmniej jedną linijkę, która utrudnia.</translation>
        </message>
        <message>
            <source>Write how everything comes home, in at most eight lines.</source>
            <translation>Napisz najwyżej w ośmiu linijkach, jak wszystko wraca na miejsce.</translation>
        </message>
        <message>
            <source>Write how it is played with one hand.</source>
            <translation>Napisz, jak bawić się jedną ręką.</translation>
        </message>
        <message>
            <source>Write how many. An empty square says none. Count together at the end of the week.</source>
            <translation>Wpisz, ile. Puste pole znaczy: nic. Pod koniec tygodnia policzcie razem.</translation>
        </message>
        <message>
            <source>Write it out: what the one hand does, and how it is played from a chair.</source>
            <translation>Napisz dokładnie: co robi jedna ręka i jak bawić się z krzesła.</translation>
        </message>
        <message>
            <source>Write one or two lines to say while playing.</source>
            <translation>Napisz jedną lub dwie linijki do powiedzenia w czasie zabawy.</translation>
        </message>
        <message>
            <source>Written by %1, not yet checked by a clinician.</source>
            <translation>Autor: %1. Jeszcze niesprawdzone przez klinicystę.</translation>
        </message>
        <message>
            <source>Written with care, not yet checked by a clinician.</source>
            <translation>Napisane starannie, jeszcze niesprawdzone przez specjalistę medycznego.</translation>
        </message>
        <message>
            <source>Written with care, not yet checked by a clinician. Follow your local rules and your therapist.</source>
            <translation>Napisane starannie, jeszcze niesprawdzone przez specjalistę medycznego. Trzymaj się miejscowych zasad i wskazówek swojego terapeuty.</translation>
        </message>
        <message>
            <source>Yesterday</source>
            <translation>Wczoraj</translation>
        </message>
        <message>
            <source>Your kite was in the bag.</source>
            <translation>Twój latawiec był w worku.</translation>
        </message>
        <message>
            <source>Your kite was resting.</source>
            <translation>Twój latawiec odpoczywał.</translation>
        </message>
        <message>
            <source>Your kite was steady.</source>
            <translation>Twój latawiec leciał równo.</translation>
        </message>
        <message>
            <source>Your kite was tugging.</source>
            <translation>Twój latawiec się szarpał.</translation>
        </message>
        <message>
            <source>Your own breath out, slowly. Shoulders down. Sit lower than your child.</source>
            <translation>Twój własny wydech, powoli. Barki w dół. Usiądź niżej niż dziecko.</translation>
        </message>
        <message>
            <source>Your therapist shows only what a clinician has checked.</source>
            <translation>Twój terapeuta pokazuje tylko to, co sprawdził specjalista medyczny.</translation>
        </message>
        <message>
            <source>Your time with this box ended on %1 %2. What you noted stays with the family. They can ask you again.</source>
            <translation>Twój czas z tym pudełkiem skończył się %1 %2. Twoje zapisy zostają u rodziny. Rodzina może poprosić cię znowu.</translation>
        </message>
        <message>
            <source>Your time with this box ended on %1. What you noted stays with the family. They can ask you again.</source>
            <translation>Twój czas z tym pudełkiem już się skończył (%1). Twoje zapisy zostają u rodziny. Rodzina może poprosić cię znowu.</translation>
        </message>
        <message>
            <source>a box for %1</source>
            <translation>pudełko dla: %1</translation>
        </message>
        <message>
            <source>a build</source>
            <translation>partii pudełek</translation>
        </message>
        <message>
            <source>a counting in of %1</source>
            <translation>doliczenie: %1</translation>
        </message>
        <message>
            <source>a lid list</source>
            <translation>listy z wieczka</translation>
        </message>
        <message>
            <source>a request for %1</source>
            <translation>prośba: %1</translation>
        </message>
        <message>
            <source>a stretchy band</source>
            <translation>taśmy do ćwiczeń</translation>
        </message>
        <message>
            <source>about %1 min</source>
            <translation>około %1 min</translation>
        </message>
        <message>
            <source>adhesive</source>
            <translation>klej</translation>
        </message>
        <message>
            <source>all back</source>
            <translation>wszystko wróciło</translation>
        </message>
        <message>
            <source>an activity</source>
            <translation>zabawa</translation>
        </message>
        <message>
            <source>an earlier day</source>
            <translation>wcześniejszy dzień</translation>
        </message>
        <message>
            <source>another activity</source>
            <translation>inna zabawa</translation>
        </message>
        <message>
            <source>any %1 in this box</source>
            <translation>jakakolwiek sztuka w tym pudełku: %1</translation>
        </message>
        <message>
            <source>as a ball it passes the hole for small balls</source>
            <translation>jako piłka przechodzi przez otwór dla małych piłek</translation>
        </message>
        <message>
            <source>balloons</source>
            <translation>balonów</translation>
        </message>
        <message>
            <source>bought: all of it</source>
            <translation>kupione: już wszystko</translation>
        </message>
        <message>
            <source>boxes: none yet</source>
            <translation>pudełka: jeszcze żadnego</translation>
        </message>
        <message>
            <source>broken</source>
            <translation>zepsute</translation>
        </message>
        <message>
            <source>cloth near faces</source>
            <translation>tkaniny blisko twarzy</translation>
        </message>
        <message>
            <source>code: another clinic's</source>
            <translation>kod: innej poradni</translation>
        </message>
        <message>
            <source>coins</source>
            <translation>monet</translation>
        </message>
        <message>
            <source>comfy and ready</source>
            <translation>wygodnie mu, jest gotowy</translation>
        </message>
        <message>
            <source>contact: at most 60 characters</source>
            <translation>kontakt: najwyżej 60 znaków</translation>
        </message>
        <message>
            <source>contact: not plain text</source>
            <translation>kontakt: to nie jest zwykły tekst</translation>
        </message>
        <message>
            <source>contact: one line only</source>
            <translation>kontakt: tylko jedna linijka</translation>
        </message>
        <message>
            <source>cords</source>
            <translation>sznurówek</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>policzone</translation>
        </message>
        <message>
            <source>currency: three capital letters</source>
            <translation>waluta: trzy wielkie litery</translation>
        </message>
        <message>
            <source>cutting and making</source>
            <translation>wycinanie i majsterkowanie</translation>
        </message>
        <message>
            <source>day: before it came back</source>
            <translation>dzień: zanim wróciło</translation>
        </message>
        <message>
            <source>day: before it came into the box</source>
            <translation>dzień: zanim to przyszło do pudełka</translation>
        </message>
        <message>
            <source>day: before the goal was agreed</source>
            <translation>dzień: przed uzgodnieniem celu</translation>
        </message>
        <message>
            <source>day: more than 31 days ago</source>
            <translation>dzień: ponad 31 dni temu</translation>
        </message>
        <message>
            <source>day: today to a week ahead</source>
            <translation>dzień: od dziś do tygodnia naprzód</translation>
        </message>
        <message>
            <source>days: 1 to 365</source>
            <translation>dni: 1 do 365</translation>
        </message>
        <message>
            <source>doing it together</source>
            <translation>robienie czegoś razem</translation>
        </message>
        <message>
            <source>dough</source>
            <translation>ciastoliny</translation>
        </message>
        <message>
            <source>drawing and writing</source>
            <translation>rysowanie i pisanie</translation>
        </message>
        <message>
            <source>dried out</source>
            <translation>wyschło</translation>
        </message>
        <message>
            <source>dye</source>
            <translation>barwnik</translation>
        </message>
        <message>
            <source>egg</source>
            <translation>jajko</translation>
        </message>
        <message>
            <source>emergency number: only digits, spaces, + and -, at most 20</source>
            <translation>numer alarmowy: tylko cyfry, spacje, + i -, najwyżej 20</translation>
        </message>
        <message>
            <source>eyes guiding hands</source>
            <translation>oczy prowadzą ręce</translation>
        </message>
        <message>
            <source>feeling push and pull in muscles</source>
            <translation>czucie mięśni przy pchaniu i ciągnięciu</translation>
        </message>
        <message>
            <source>finger-and-thumb pick-up</source>
            <translation>chwytanie dwoma palcami</translation>
        </message>
        <message>
            <source>foam</source>
            <translation>pianki</translation>
        </message>
        <message>
            <source>foil</source>
            <translation>folii</translation>
        </message>
        <message>
            <source>food boxes</source>
            <translation>opakowań po jedzeniu</translation>
        </message>
        <message>
            <source>for the left hand</source>
            <translation>na lewą rękę</translation>
        </message>
        <message>
            <source>for the right hand</source>
            <translation>na prawą rękę</translation>
        </message>
        <message>
            <source>forks</source>
            <translation>widelców</translation>
        </message>
        <message>
            <source>found: nothing named</source>
            <translation>znalezione: nic nie nazwano</translation>
        </message>
        <message>
            <source>getting dressed</source>
            <translation>ubieranie się</translation>
        </message>
        <message>
            <source>getting ready to go</source>
            <translation>szykowanie się do wyjścia</translation>
        </message>
        <message>
            <source>goal: it has ended</source>
            <translation>cel: jest zakończony</translation>
        </message>
        <message>
            <source>goal: it has not ended</source>
            <translation>cel: nie jest zakończony</translation>
        </message>
        <message>
            <source>grading: only the therapist pins one</source>
            <translation>stopień trudności: ustala go tylko terapeuta</translation>
        </message>
        <message>
            <source>holding on to an idea</source>
            <translation>trzymanie myśli w głowie</translation>
        </message>
        <message>
            <source>home without wheat</source>
            <translation>dom bez pszenicy</translation>
        </message>
        <message>
            <source>in place of %1</source>
            <translation>zamiast: %1</translation>
        </message>
        <message>
            <source>it fits the small parts cylinder</source>
            <translation>mieści się w cylindrze do małych części</translation>
        </message>
        <message>
            <source>it is a marble</source>
            <translation>to kulka do gry</translation>
        </message>
        <message>
            <source>its %1 fits the small parts cylinder</source>
            <translation>ta część mieści się w cylindrze do małych części: %1</translation>
        </message>
        <message>
            <source>its %1 is a suction cup or dart tip</source>
            <translation>ta część jest przyssawką albo końcówką strzałki: %1</translation>
        </message>
        <message>
            <source>its %1 passes the hole for small balls</source>
            <translation>ta część przechodzi przez otwór dla małych piłek: %1</translation>
        </message>
        <message>
            <source>its cord is longer than 220 mm</source>
            <translation>sznurek jest dłuższy niż 220 mm</translation>
        </message>
        <message>
            <source>its cord is thinner than 1.5 mm</source>
            <translation>sznurek jest cieńszy niż 1.5 mm</translation>
        </message>
        <message>
            <source>its loop is wider than 360 mm round</source>
            <translation>pętla ma w obwodzie ponad 360 mm</translation>
        </message>
        <message>
            <source>keeping a beat</source>
            <translation>trzymanie rytmu</translation>
        </message>
        <message>
            <source>kind: an adult, but born less than 18 years ago</source>
            <translation>rodzaj: dorosły, ale wiek poniżej 18 lat</translation>
        </message>
        <message>
            <source>knowing where my body is</source>
            <translation>wyczucie, gdzie jest moje ciało</translation>
        </message>
        <message>
            <source>latex</source>
            <translation>lateksu</translation>
        </message>
        <message>
            <source>latex-free home</source>
            <translation>dom bez lateksu</translation>
        </message>
        <message>
            <source>learning by touch</source>
            <translation>poznawanie dotykiem</translation>
        </message>
        <message>
            <source>lifting</source>
            <translation>podnoszenia</translation>
        </message>
        <message>
            <source>lost</source>
            <translation>zgubione</translation>
        </message>
        <message>
            <source>milk</source>
            <translation>mleko</translation>
        </message>
        <message>
            <source>mouth and breath play</source>
            <translation>zabawa ustami i oddechem</translation>
        </message>
        <message>
            <source>mouths: pica stands as yes; say no to that first</source>
            <translation>buzia: pica jest na „tak”; najpierw odpowiedz tam „nie”</translation>
        </message>
        <message>
            <source>movement and balance sense</source>
            <translation>czucie ruchu i równowagi</translation>
        </message>
        <message>
            <source>moving about</source>
            <translation>poruszania się</translation>
        </message>
        <message>
            <source>moving things inside one hand</source>
            <translation>przesuwanie rzeczy w jednej dłoni</translation>
        </message>
        <message>
            <source>no date</source>
            <translation>brak daty</translation>
        </message>
        <message>
            <source>no name</source>
            <translation>brak nazwy</translation>
        </message>
        <message>
            <source>noise</source>
            <translation>hałasu</translation>
        </message>
        <message>
            <source>not too hard, not too soft</source>
            <translation>nie za mocno, nie za lekko</translation>
        </message>
        <message>
            <source>noticing and matching by eye</source>
            <translation>zauważanie i dobieranie w pary wzrokiem</translation>
        </message>
        <message>
            <source>now</source>
            <translation>teraz</translation>
        </message>
        <message>
            <source>nut</source>
            <translation>orzechy</translation>
        </message>
        <message>
            <source>on %1</source>
            <translation>%1</translation>
        </message>
        <message>
            <source>on Friday</source>
            <translation>w piątek</translation>
        </message>
        <message>
            <source>on Friday afternoon</source>
            <translation>w piątek po południu</translation>
        </message>
        <message>
            <source>on Friday evening</source>
            <translation>w piątek wieczorem</translation>
        </message>
        <message>
            <source>on Friday morning</source>
            <translation>w piątek rano</translation>
        </message>
        <message>
            <source>on Monday</source>
            <translation>w poniedziałek</translation>
        </message>
        <message>
            <source>on Monday afternoon</source>
            <translation>w poniedziałek po południu</translation>
        </message>
        <message>
            <source>on Monday evening</source>
            <translation>w poniedziałek wieczorem</translation>
        </message>
        <message>
            <source>on Monday morning</source>
            <translation>w poniedziałek rano</translation>
        </message>
        <message>
            <source>on Saturday</source>
            <translation>w sobotę</translation>
        </message>
        <message>
            <source>on Saturday afternoon</source>
            <translation>w sobotę po południu</translation>
        </message>
        <message>
            <source>on Saturday evening</source>
            <translation>w sobotę wieczorem</translation>
        </message>
        <message>
            <source>on Saturday morning</source>
            <translation>w sobotę rano</translation>
        </message>
        <message>
            <source>on Sunday</source>
            <translation>w niedzielę</translation>
        </message>
        <message>
            <source>on Sunday afternoon</source>
            <translation>w niedzielę po południu</translation>
        </message>
        <message>
            <source>on Sunday evening</source>
            <translation>w niedzielę wieczorem</translation>
        </message>
        <message>
            <source>on Sunday morning</source>
            <translation>w niedzielę rano</translation>
        </message>
        <message>
            <source>on Thursday</source>
            <translation>w czwartek</translation>
        </message>
        <message>
            <source>on Thursday afternoon</source>
            <translation>w czwartek po południu</translation>
        </message>
        <message>
            <source>on Thursday evening</source>
            <translation>w czwartek wieczorem</translation>
        </message>
        <message>
            <source>on Thursday morning</source>
            <translation>w czwartek rano</translation>
        </message>
        <message>
            <source>on Tuesday</source>
            <translation>we wtorek</translation>
        </message>
        <message>
            <source>on Tuesday afternoon</source>
            <translation>we wtorek po południu</translation>
        </message>
        <message>
            <source>on Tuesday evening</source>
            <translation>we wtorek wieczorem</translation>
        </message>
        <message>
            <source>on Tuesday morning</source>
            <translation>we wtorek rano</translation>
        </message>
        <message>
            <source>on Wednesday</source>
            <translation>w środę</translation>
        </message>
        <message>
            <source>on Wednesday afternoon</source>
            <translation>w środę po południu</translation>
        </message>
        <message>
            <source>on Wednesday evening</source>
            <translation>w środę wieczorem</translation>
        </message>
        <message>
            <source>on Wednesday morning</source>
            <translation>w środę rano</translation>
        </message>
        <message>
            <source>on the list</source>
            <translation>na liście</translation>
        </message>
        <message>
            <source>one finger at a time</source>
            <translation>każdy palec osobno</translation>
        </message>
        <message>
            <source>opening things</source>
            <translation>otwieranie rzeczy</translation>
        </message>
        <message>
            <source>paper</source>
            <translation>papieru</translation>
        </message>
        <message>
            <source>pegs</source>
            <translation>klamerek</translation>
        </message>
        <message>
            <source>playing with others</source>
            <translation>zabawa z innymi</translation>
        </message>
        <message>
            <source>poison line: only digits, spaces, + and -, at most 20</source>
            <translation>numer przy zatruciu: tylko cyfry, spacje, + i -, najwyżej 20</translation>
        </message>
        <message>
            <source>puffing games</source>
            <translation>zabaw w dmuchanie</translation>
        </message>
        <message>
            <source>reaching across the middle</source>
            <translation>sięganie na drugą stronę</translation>
        </message>
        <message>
            <source>record.json has all of it, for programs. Each file that ends in .csv is one table of it, for a spreadsheet.</source>
            <translation>record.json ma to wszystko, dla programów. Każdy plik z końcówką .csv to jedna tabela z tego, do arkusza.</translation>
        </message>
        <message>
            <source>role: only who packs comes into the clinic</source>
            <translation>rola: do poradni wchodzi tylko ten, kto pakuje</translation>
        </message>
        <message>
            <source>rubber bands</source>
            <translation>gumek recepturek</translation>
        </message>
        <message>
            <source>salty dough</source>
            <translation>słonej ciastoliny</translation>
        </message>
        <message>
            <source>scissors</source>
            <translation>nożyczek</translation>
        </message>
        <message>
            <source>settling down</source>
            <translation>wyciszanie się</translation>
        </message>
        <message>
            <source>slow, floppy, or just quiet</source>
            <translation>wolny, miękki albo po prostu cichy</translation>
        </message>
        <message>
            <source>small parts</source>
            <translation>małych części</translation>
        </message>
        <message>
            <source>somebody in the crew</source>
            <translation>ktoś z załogi</translation>
        </message>
        <message>
            <source>something</source>
            <translation>coś</translation>
        </message>
        <message>
            <source>soy</source>
            <translation>soja</translation>
        </message>
        <message>
            <source>spares: 0 to 100 percent</source>
            <translation>zapas: od 0 do 100 procent</translation>
        </message>
        <message>
            <source>spoon, fork and cup</source>
            <translation>łyżka, widelec i kubek</translation>
        </message>
        <message>
            <source>steady body</source>
            <translation>stabilne ciało</translation>
        </message>
        <message>
            <source>stickers</source>
            <translation>naklejek</translation>
        </message>
        <message>
            <source>still in use</source>
            <translation>jeszcze w użyciu</translation>
        </message>
        <message>
            <source>straws</source>
            <translation>słomek</translation>
        </message>
        <message>
            <source>strong hands</source>
            <translation>silne ręce</translation>
        </message>
        <message>
            <source>strong smells</source>
            <translation>mocnych zapachów</translation>
        </message>
        <message>
            <source>that day</source>
            <translation>tamten dzień</translation>
        </message>
        <message>
            <source>that's fine</source>
            <translation>to w porządku</translation>
        </message>
        <message>
            <source>the activity %1</source>
            <translation>zabawa %1</translation>
        </message>
        <message>
            <source>the box of this play</source>
            <translation>pudełko tej zabawy</translation>
        </message>
        <message>
            <source>these words of the goal</source>
            <translation>tych słów celu</translation>
        </message>
        <message>
            <source>things for one child only</source>
            <translation>rzeczy tylko dla jednego dziecka</translation>
        </message>
        <message>
            <source>this</source>
            <translation>tego</translation>
        </message>
        <message>
            <source>this afternoon</source>
            <translation>dziś po południu</translation>
        </message>
        <message>
            <source>this box</source>
            <translation>tego pudełka</translation>
        </message>
        <message>
            <source>this build</source>
            <translation>tej partii pudełek</translation>
        </message>
        <message>
            <source>this design</source>
            <translation>tego wzoru</translation>
        </message>
        <message>
            <source>this evening</source>
            <translation>dziś wieczorem</translation>
        </message>
        <message>
            <source>this goal</source>
            <translation>tego celu</translation>
        </message>
        <message>
            <source>this morning</source>
            <translation>dziś rano</translation>
        </message>
        <message>
            <source>this piece of %1</source>
            <translation>ta sztuka: %1</translation>
        </message>
        <message>
            <source>this play</source>
            <translation>ta zabawa</translation>
        </message>
        <message>
            <source>this question</source>
            <translation>to pytanie</translation>
        </message>
        <message>
            <source>this week</source>
            <translation>ten tydzień</translation>
        </message>
        <message>
            <source>three-finger hold for drawing tools</source>
            <translation>trzymanie kredki trzema palcami</translation>
        </message>
        <message>
            <source>tin rims</source>
            <translation>brzegów puszek</translation>
        </message>
        <message>
            <source>today</source>
            <translation>dziś</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>jutro</translation>
        </message>
        <message>
            <source>touch</source>
            <translation>dotyku</translation>
        </message>
        <message>
            <source>turning</source>
            <translation>obracania się</translation>
        </message>
        <message>
            <source>two hands working as a team</source>
            <translation>dwie ręce pracują razem</translation>
        </message>
        <message>
            <source>used up</source>
            <translation>zużyte</translation>
        </message>
        <message>
            <source>using a tool</source>
            <translation>używanie narzędzia</translation>
        </message>
        <message>
            <source>water</source>
            <translation>wody</translation>
        </message>
        <message>
            <source>week: only this home's own phones plan it</source>
            <translation>tydzień: planują go tylko telefony tego domu</translation>
        </message>
        <message>
            <source>weight: 0 to 9</source>
            <translation>waga: od 0 do 9</translation>
        </message>
        <message>
            <source>what was asked for</source>
            <translation>to, czego szukasz</translation>
        </message>
        <message>
            <source>what was typed</source>
            <translation>to, co wpisano</translation>
        </message>
        <message>
            <source>wheat</source>
            <translation>pszenicy</translation>
        </message>
        <message>
            <source>wiggly, fizzy, fast</source>
            <translation>wierci się, buzuje, pędzi</translation>
        </message>
        <message>
            <source>working out a new movement</source>
            <translation>wymyślanie nowego ruchu</translation>
        </message>
        <message>
            <source>worn down, it fits the small parts cylinder</source>
            <translation>zużyte, mieści się w cylindrze do małych części</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>wczoraj</translation>
        </message>
        <message>
            <source>yesterday afternoon</source>
            <translation>wczoraj po południu</translation>
        </message>
        <message>
            <source>yesterday evening</source>
            <translation>wczoraj wieczorem</translation>
        </message>
        <message>
            <source>yesterday morning</source>
            <translation>wczoraj rano</translation>
        </message>
        <message>
            <source>“%1” may read like a feeling or an opinion. What would somebody see?</source>
            <translation>„%1” może brzmieć jak uczucie lub opinia. Co ktoś by zobaczył?</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::AdditionViewModel</name>
        <message>
            <source>%1 In its place: %2.</source>
            <translation>%1 Zamiast tego: %2.</translation>
        </message>
        <message>
            <source>In place of: %1</source>
            <translation>Zamiast: %1</translation>
        </message>
        <message>
            <source>Latex must stay away from this home.</source>
            <translation>W tym domu nie może być lateksu.</translation>
        </message>
        <message>
            <source>Wheat must stay away from this home.</source>
            <translation>W tym domu nie może być pszenicy.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BoxViewModel</name>
        <message>
            <source>%1, says %2, %3</source>
            <translation>%1, mówi %2, %3</translation>
        </message>
        <message>
            <source>%1. Or: %2</source>
            <translation>%1. Albo: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n asked for.</source>
            <translation>
                <numerusform>Prośby: %n.</numerusform>
                <numerusform>Prośby: %n.</numerusform>
                <numerusform>Prośby: %n.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n running low.</source>
            <translation>
                <numerusform>Kończy się: %n.</numerusform>
                <numerusform>Kończy się: %n.</numerusform>
                <numerusform>Kończy się: %n.</numerusform>
            </translation>
        </message>
        <message>
            <source>Lid list R%1</source>
            <translation>Lista z wieczka R%1</translation>
        </message>
        <message>
            <source>Nobody has said where it is</source>
            <translation>Nikt nie powiedział, gdzie jest</translation>
        </message>
        <message>
            <source>Nothing asked for, nothing low.</source>
            <translation>Brak próśb, wszystkiego jest dosyć.</translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>prośba</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>miejsce: %1</translation>
        </message>
        <message>
            <source>at home</source>
            <translation>w domu</translation>
        </message>
        <message>
            <source>take out</source>
            <translation>wynieś</translation>
        </message>
        <message>
            <source>taken out</source>
            <translation>wyniesione</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildBoxViewModel</name>
        <message>
            <source>Added</source>
            <translation>Dodane</translation>
        </message>
        <message>
            <source>Age</source>
            <translation>Wiek</translation>
        </message>
        <message>
            <source>Allergy</source>
            <translation>Alergia</translation>
        </message>
        <message>
            <source>Goal</source>
            <translation>Cel</translation>
        </message>
        <message>
            <source>Hand</source>
            <translation>Ręka</translation>
        </message>
        <message>
            <source>Home</source>
            <translation>Dom</translation>
        </message>
        <message>
            <source>Instead of %1</source>
            <translation>Zamiast: %1</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>Pominięte</translation>
        </message>
        <message>
            <source>Mouth</source>
            <translation>Usta</translation>
        </message>
        <message>
            <source>No latex may go in.</source>
            <translation>Bez lateksu.</translation>
        </message>
        <message>
            <source>No wheat may go in.</source>
            <translation>Bez pszenicy.</translation>
        </message>
        <message>
            <source>Usually %1</source>
            <translation>Zwykle %1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildViewModel</name>
        <message>
            <source>%1 for %2</source>
            <translation>%1 dla: %2</translation>
        </message>
        <message>
            <source>%1, as designed</source>
            <translation>%1, według wzoru</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>As designed: %1</source>
            <translation>Według wzoru: %1</translation>
        </message>
        <message>
            <source>As designed: nothing has to be swapped.</source>
            <translation>Według wzoru: niczego nie trzeba zamieniać.</translation>
        </message>
        <message>
            <source>Bought on %1 for %2.</source>
            <translation>Kupione %1 za %2.</translation>
        </message>
        <message>
            <source>Boxes for %1</source>
            <translation>Pudełka dla: %1</translation>
        </message>
        <message>
            <source>Packed on %1. Spares: %2 percent. Prices in %3.</source>
            <translation>Pakowanie: %1. Zapas: %2 procent. Ceny w %3.</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>jeszcze nikogo</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildsViewModel</name>
        <message>
            <source>%1. Boxes: %2. Ready: %3.</source>
            <translation>%1. Pudełka: %2. Gotowe: %3.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CaseloadViewModel</name>
        <message numerus="yes">
            <source>%n boxes</source>
            <translation>
                <numerusform>%n pudełko</numerusform>
                <numerusform>%n pudełka</numerusform>
                <numerusform>%n pudełek</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n things to pack.</source>
            <translation>
                <numerusform>%n rzecz do spakowania.</numerusform>
                <numerusform>%n rzeczy do spakowania.</numerusform>
                <numerusform>%n rzeczy do spakowania.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be read</source>
            <translation>Nie da się odczytać</translation>
        </message>
        <message>
            <source>Nothing to pack.</source>
            <translation>Nic do spakowania.</translation>
        </message>
        <message>
            <source>Nothing waits</source>
            <translation>Nic nie czeka</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ChildViewModel</name>
        <message>
            <source>%1 on the list, %2 in the box</source>
            <translation>%1 na liście, %2 w pudełku</translation>
        </message>
        <message>
            <source>Lid list R%1</source>
            <translation>Lista z wieczka R%1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CountViewModel</name>
        <message>
            <source>%1 on the lid list</source>
            <translation>Na liście z wieczka: %1</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CrewLife</name>
        <message>
            <source>%1 said yes to sharing on %2.</source>
            <translation>Zgoda na udostępnianie: %1, %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CrewMembers</name>
        <message>
            <source>A recovery sheet on paper</source>
            <translation>Karta zapasowa na papierze</translation>
        </message>
        <message>
            <source>Packs at the table</source>
            <translation>Pakuje przy stole</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::DesignViewModel</name>
        <message>
            <source>Of %1 plays, %2 can be made with this box and what a home lends.</source>
            <translation>Z %1 zabaw z tym pudełkiem i rzeczami z domu możliwe są %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::DesignsViewModel</name>
        <message>
            <source>Kinds of thing: %1. Plays that can be made: %2.</source>
            <translation>Rodzaje rzeczy: %1. Możliwe zabawy: %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::EverythingViewModel</name>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message numerus="yes">
            <source>%n minute(s)</source>
            <translation>
                <numerusform>%n minuta</numerusform>
                <numerusform>%n minuty</numerusform>
                <numerusform>%n minut</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::FloorViewModel</name>
        <message>
            <source>Every piece found</source>
            <translation>Znaleziony każdy kawałek</translation>
        </message>
        <message>
            <source>Found it</source>
            <translation>Znalezione</translation>
        </message>
        <message>
            <source>Look for every bit.</source>
            <translation>Szukaj każdego kawałka.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalNumbersViewModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: not rated</source>
            <translation>%1: bez oceny</translation>
        </message>
        <message numerus="yes">
            <source>%n goals that ended are left out of these values.</source>
            <translation>
                <numerusform>Pominięto tu %n zakończony cel.</numerusform>
                <numerusform>Pominięto tu %n zakończone cele.</numerusform>
                <numerusform>Pominięto tu %n zakończonych celów.</numerusform>
            </translation>
        </message>
        <message>
            <source>Agreed together</source>
            <translation>Uzgodnione razem</translation>
        </message>
        <message>
            <source>No T-value: nothing rated has a weight</source>
            <translation>Brak wartości T: nic z ocenionych nie ma wagi</translation>
        </message>
        <message>
            <source>Rests on %1 of %2 goals</source>
            <translation>Opiera się na tylu celach: %1 z %2</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalPageViewModel</name>
        <message>
            <source>%1: here it is now</source>
            <translation>%1: tu jest teraz</translation>
        </message>
        <message>
            <source>%1: here it stood last</source>
            <translation>%1: tu było ostatnio</translation>
        </message>
        <message>
            <source>Agreed on %1</source>
            <translation>Uzgodnione: %1</translation>
        </message>
        <message>
            <source>Agreed on %1, written down by %2</source>
            <translation>Uzgodnione: %1. Zapisane przez: %2</translation>
        </message>
        <message>
            <source>Earlier words</source>
            <translation>Wcześniejsze słowa</translation>
        </message>
        <message>
            <source>It was to be looked at again %1.</source>
            <translation>Powrót miał być: %1.</translation>
        </message>
        <message>
            <source>Its five steps</source>
            <translation>Pięć poziomów</translation>
        </message>
        <message>
            <source>Its last words</source>
            <translation>Jego ostatnie słowa</translation>
        </message>
        <message>
            <source>Looked at again %1.</source>
            <translation>Powrót: %1.</translation>
        </message>
        <message>
            <source>Why: %1</source>
            <translation>Dlaczego: %1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalsViewModel</name>
        <message>
            <source>Agreed %1. It was to be looked at again %2.</source>
            <translation>Uzgodnione: %1. Powrót miał być: %2.</translation>
        </message>
        <message>
            <source>Agreed %1. Looked at again %2.</source>
            <translation>Uzgodnione: %1. Powrót: %2.</translation>
        </message>
        <message>
            <source>Its words have been changed. What was said of the earlier words stays with them.</source>
            <translation>Słowa celu zmieniono. To, co powiedziano o wcześniejszych, zostaje przy nich.</translation>
        </message>
        <message>
            <source>Other goals</source>
            <translation>Inne cele</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HandedFile</name>
        <message>
            <source>Saved as &quot;%1&quot; in %2. Only phones of the crew can open it.</source>
            <translation>Zapisane jako „%1” w %2. Otworzą to tylko telefony załogi.</translation>
        </message>
        <message>
            <source>There was nothing new in it.</source>
            <translation>Nie było w nim nic nowego.</translation>
        </message>
        <message>
            <source>What was new in it has been taken in.</source>
            <translation>To, co było w nim nowe, zostało przyjęte.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HaveReadyViewModel</name>
        <message>
            <source>%1 pieces</source>
            <translation>sztuk: %1</translation>
        </message>
        <message>
            <source>%1, in place of %2</source>
            <translation>%1 zamiast: %2</translation>
        </message>
        <message>
            <source>%1: something is missing</source>
            <translation>%1: czegoś brakuje</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>From the box</source>
            <translation>Z pudełka</translation>
        </message>
        <message>
            <source>From the house</source>
            <translation>Z domu</translation>
        </message>
        <message>
            <source>The lid list has changed since this was planned. Your therapist sees that too.</source>
            <translation>Lista w wieczku zmieniła się od czasu planu. Terapeutka też to widzi.</translation>
        </message>
        <message>
            <source>in case something is missing</source>
            <translation>gdyby czegoś brakowało</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HomeSheetViewModel</name>
        <message numerus="yes">
            <source>%1, %n month(s)</source>
            <translation>
                <numerusform>%1, %n miesiąc</numerusform>
                <numerusform>%1, %n miesiące</numerusform>
                <numerusform>%1, %n miesięcy</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1, %n year(s)</source>
            <translation>
                <numerusform>%1, %n rok</numerusform>
                <numerusform>%1, %n lata</numerusform>
                <numerusform>%1, %n lat</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, age not said: counts as under three</source>
            <translation>%1, wiek niepodany: liczy się jako poniżej trzech lat</translation>
        </message>
        <message>
            <source>%1, grown-up</source>
            <translation>%1, dorosły</translation>
        </message>
        <message>
            <source>Somebody else has said otherwise; the careful answer stands until they change theirs.</source>
            <translation>Ktoś inny mówi inaczej; obowiązuje ostrożna odpowiedź, dopóki ta osoba nie zmieni swojej.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ItemViewModel</name>
        <message>
            <source>%1 in the box</source>
            <translation>W pudełku: %1</translation>
        </message>
        <message>
            <source>%1 on the lid list.</source>
            <translation>Na liście z wieczka: %1.</translation>
        </message>
        <message>
            <source>None in the box</source>
            <translation>W pudełku nic</translation>
        </message>
        <message>
            <source>The numbers do not fit. A count will tell.</source>
            <translation>Liczby się nie zgadzają. Liczenie pokaże.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::JoiningIn</name>
        <message>
            <source>%1 of 9 words</source>
            <translation>Słów: %1 z 9</translation>
        </message>
        <message>
            <source>All nine words are right.</source>
            <translation>Wszystkie dziewięć słów jest dobrych.</translation>
        </message>
        <message>
            <source>The code was read by the camera.</source>
            <translation>Kod odczytano aparatem.</translation>
        </message>
        <message>
            <source>The code was read from the picture.</source>
            <translation>Kod odczytano ze zdjęcia.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::KiteCardFile</name>
        <message>
            <source>Kite card</source>
            <translation>Karta latawca</translation>
        </message>
        <message>
            <source>Saved as &quot;%1&quot; in %2.</source>
            <translation>Zapisane jako „%1” w %2.</translation>
        </message>
        <message>
            <source>The card could not be saved in %1. Is the phone full, or may nothing be written there?</source>
            <translation>Nie udało się zapisać karty w %1. Może telefon jest pełny albo nie wolno tam zapisywać?</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::LettingIn</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Parent in another home</source>
            <translation>Rodzic w innym domu</translation>
        </message>
        <message>
            <source>Sees the box and the goals, and keeps a home sheet, plays and kites of their own. Neither home sees the other's.</source>
            <translation>Widzi pudełko i cele, a kartę domu, zabawy i latawce ma własne. Żaden dom nie widzi tego, co drugi.</translation>
        </message>
        <message>
            <source>Sees the designs, the builds, what they cost and whom each box is for, and ticks what is packed. No child's goals, home sheet, plays or kites.</source>
            <translation>Widzi projekty, pakowania, ich koszt i to, dla kogo jest każde pudełko, i stawia znaki przy tym, co spakowano. Nie widzi celów, karty domu, zabaw ani latawców żadnego dziecka.</translation>
        </message>
        <message>
            <source>Somebody who packs</source>
            <translation>Ktoś, kto pakuje</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::NotebookViewModel</name>
        <message>
            <source>Agreed %1. We look again %2.</source>
            <translation>Ustalone %1. Sprawdzamy znowu %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnBoxesViewModel</name>
        <message>
            <source>Held back there:</source>
            <translation>Tam wstrzymana:</translation>
        </message>
        <message>
            <source>In the box in two wordings: send this one, and it is settled.</source>
            <translation>W pudełku w dwóch wersjach: wyślij tę, a sprawa jest jasna.</translation>
        </message>
        <message>
            <source>In the box, in older words.</source>
            <translation>W pudełku, w starszej wersji.</translation>
        </message>
        <message>
            <source>In the box.</source>
            <translation>W pudełku.</translation>
        </message>
        <message numerus="yes">
            <source>In the box: %n of them.</source>
            <translation>
                <numerusform>W pudełku: %n sztuka.</numerusform>
                <numerusform>W pudełku: %n sztuki.</numerusform>
                <numerusform>W pudełku: %n sztuk.</numerusform>
            </translation>
        </message>
        <message>
            <source>In this box it counts as it was sent before.</source>
            <translation>W tym pudełku liczy się to, co wysłano wcześniej.</translation>
        </message>
        <message>
            <source>It counts in this box.</source>
            <translation>W tym pudełku to się liczy.</translation>
        </message>
        <message>
            <source>It fits.</source>
            <translation>Pasuje.</translation>
        </message>
        <message>
            <source>It has to come out of the box: somebody at home must avoid it.</source>
            <translation>Trzeba to wyjąć z pudełka: ktoś w domu musi tego unikać.</translation>
        </message>
        <message>
            <source>No longer offered: %1.</source>
            <translation>Już nie jest proponowane: %1.</translation>
        </message>
        <message>
            <source>Offered from now on: %1.</source>
            <translation>Odtąd jest proponowane: %1.</translation>
        </message>
        <message>
            <source>Said in two ways, and the more careful counts. Send this one, and it is settled.</source>
            <translation>Podane na dwa sposoby, liczy się ostrożniejszy. Wyślij ten, a sprawa jest jasna.</translation>
        </message>
        <message>
            <source>Still offered, with more to mind: %1.</source>
            <translation>Nadal proponowane, ale trzeba bardziej uważać: %1.</translation>
        </message>
        <message>
            <source>What it says does not warn of this yet.</source>
            <translation>Jej opis jeszcze przed tym nie ostrzega.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnItemListViewModel</name>
        <message>
            <source>A draft</source>
            <translation>Szkic</translation>
        </message>
        <message>
            <source>It counts in the box of %1</source>
            <translation>Liczy się w pudełku: %1</translation>
        </message>
        <message>
            <source>One of ours, as you measured it</source>
            <translation>Jedna z naszych, tak jak ją zmierzono</translation>
        </message>
        <message>
            <source>Ready, and sent to no box yet</source>
            <translation>Gotowa, jeszcze nigdzie niewysłana</translation>
        </message>
        <message>
            <source>Sent to the box of %1, and changed since</source>
            <translation>Wysłana do pudełka: %1, potem zmieniona</translation>
        </message>
        <message>
            <source>Without a name yet</source>
            <translation>Jeszcze bez nazwy</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnItemViewModel</name>
        <message>
            <source>A number is missing, or is none.</source>
            <translation>Brakuje liczby albo to nie jest liczba.</translation>
        </message>
        <message>
            <source>A sheet: long, mm</source>
            <translation>Arkusz: długość, mm</translation>
        </message>
        <message>
            <source>A sheet: wide, mm</source>
            <translation>Arkusz: szerokość, mm</translation>
        </message>
        <message>
            <source>A size is still to come, so it counts for nothing yet.</source>
            <translation>Brakuje jeszcze wymiaru, więc na razie nic nie znaczy.</translation>
        </message>
        <message>
            <source>A string pulls it shut</source>
            <translation>Zaciąga się sznurkiem</translation>
        </message>
        <message>
            <source>A thing of your own</source>
            <translation>Twoja własna rzecz</translation>
        </message>
        <message>
            <source>Across inside, mm</source>
            <translation>Średnica w środku, mm</translation>
        </message>
        <message>
            <source>As a ball</source>
            <translation>Jak piłka</translation>
        </message>
        <message>
            <source>As a marble</source>
            <translation>Jak szklana kulka</translation>
        </message>
        <message>
            <source>Can be washed</source>
            <translation>Da się umyć</translation>
        </message>
        <message>
            <source>Cannot be washed</source>
            <translation>Nie da się umyć</translation>
        </message>
        <message>
            <source>Comes back</source>
            <translation>Wraca</translation>
        </message>
        <message>
            <source>Comes back smaller</source>
            <translation>Wraca mniejsze</translation>
        </message>
        <message>
            <source>Comes back, and is counted</source>
            <translation>Wraca i jest liczone</translation>
        </message>
        <message>
            <source>Cut, torn or pinched into pieces</source>
            <translation>Cięte, darte albo szczypane na kawałki</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Dni</translation>
        </message>
        <message>
            <source>Days from one look to the next</source>
            <translation>Co ile dni się ogląda</translation>
        </message>
        <message>
            <source>Days it keeps once opened</source>
            <translation>Ile dni po otwarciu</translation>
        </message>
        <message>
            <source>Days until a new one takes its place</source>
            <translation>Po ilu dniach wymiana na nowe</translation>
        </message>
        <message>
            <source>Deep, mm</source>
            <translation>Głębokość, mm</translation>
        </message>
        <message>
            <source>Holes, percent of it</source>
            <translation>Dziurki, procent całości</translation>
        </message>
        <message>
            <source>In the box</source>
            <translation>W pudełku</translation>
        </message>
        <message>
            <source>Lent by the home</source>
            <translation>Pożycza dom</translation>
        </message>
        <message>
            <source>Long, mm</source>
            <translation>Długość, mm</translation>
        </message>
        <message>
            <source>Looked at before every use</source>
            <translation>Oglądane przed każdym użyciem</translation>
        </message>
        <message>
            <source>Loop, all round, mm</source>
            <translation>Pętla, obwód, mm</translation>
        </message>
        <message>
            <source>Neither</source>
            <translation>Ani tak, ani tak</translation>
        </message>
        <message>
            <source>None of these</source>
            <translation>Nic z tego</translation>
        </message>
        <message>
            <source>Nothing small and no long cord.</source>
            <translation>Nic małego ani długiego sznurka.</translation>
        </message>
        <message>
            <source>Nothing: it has no size to go by.</source>
            <translation>Nic: nie ma wymiaru, który by coś mówił.</translation>
        </message>
        <message>
            <source>Opening of a bag, all round, mm</source>
            <translation>Otwór torebki, obwód, mm</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Sztuki</translation>
        </message>
        <message>
            <source>Sharp, pointed or in a mouth</source>
            <translation>Ostre, spiczaste albo w ustach</translation>
        </message>
        <message>
            <source>Stays with one child</source>
            <translation>Zostaje u jednego dziecka</translation>
        </message>
        <message>
            <source>Stiff: it keeps its shape in a hand</source>
            <translation>Sztywny: w ręce nie zmienia kształtu</translation>
        </message>
        <message>
            <source>The narrow way, mm</source>
            <translation>Węższy wymiar, mm</translation>
        </message>
        <message>
            <source>Thick, mm</source>
            <translation>Grubość, mm</translation>
        </message>
        <message>
            <source>Used once only</source>
            <translation>Tylko na jeden raz</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>Zużywa się w zabawie</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnListViewModel</name>
        <message>
            <source>A draft</source>
            <translation>Szkic</translation>
        </message>
        <message>
            <source>In the box of %1</source>
            <translation>W pudełku: %1</translation>
        </message>
        <message>
            <source>In the box of %1, in older words</source>
            <translation>W pudełku: %1, w starszej wersji</translation>
        </message>
        <message>
            <source>Ready, and in no box yet</source>
            <translation>Gotowa, jeszcze w żadnym pudełku</translation>
        </message>
        <message>
            <source>Without a name yet</source>
            <translation>Jeszcze bez nazwy</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnNumbers</name>
        <message>
            <source>A number from %1 to %2.</source>
            <translation>Liczba od %1 do %2.</translation>
        </message>
        <message>
            <source>A whole number from %1 to %2.</source>
            <translation>Liczba całkowita od %1 do %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnSolids</name>
        <message>
            <source>A ball</source>
            <translation>Kula</translation>
        </message>
        <message>
            <source>A block</source>
            <translation>Klocek</translation>
        </message>
        <message>
            <source>A disc</source>
            <translation>Krążek</translation>
        </message>
        <message>
            <source>A rod</source>
            <translation>Walec</translation>
        </message>
        <message>
            <source>An egg</source>
            <translation>Jajko</translation>
        </message>
        <message>
            <source>Soft, of no size</source>
            <translation>Miękkie, bez wymiaru</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnWritingViewModel</name>
        <message>
            <source>%1: count %2</source>
            <translation>%1: policz %2</translation>
        </message>
        <message>
            <source>%1: the pieces that come of it</source>
            <translation>%1: kawałki, które z tego powstają</translation>
        </message>
        <message>
            <source>A lap</source>
            <translation>Kolana</translation>
        </message>
        <message>
            <source>A mat</source>
            <translation>Mata</translation>
        </message>
        <message>
            <source>A room</source>
            <translation>Pokój</translation>
        </message>
        <message>
            <source>A table</source>
            <translation>Stół</translation>
        </message>
        <message>
            <source>Choice</source>
            <translation>Wybór</translation>
        </message>
        <message>
            <source>Distance</source>
            <translation>Odległość</translation>
        </message>
        <message>
            <source>From which age on?</source>
            <translation>Od jakiego wieku?</translation>
        </message>
        <message>
            <source>Hand</source>
            <translation>Ręka</translation>
        </message>
        <message>
            <source>In a wheelchair</source>
            <translation>Na wózku</translation>
        </message>
        <message>
            <source>Little strength</source>
            <translation>Mało siły</translation>
        </message>
        <message>
            <source>Loud</source>
            <translation>Głośno</translation>
        </message>
        <message>
            <source>Lying on the side</source>
            <translation>Leżąc na boku</translation>
        </message>
        <message>
            <source>Memory</source>
            <translation>Pamięć</translation>
        </message>
        <message>
            <source>Much strength</source>
            <translation>Dużo siły</translation>
        </message>
        <message>
            <source>No hand</source>
            <translation>Bez rąk</translation>
        </message>
        <message>
            <source>No mess</source>
            <translation>Bez bałaganu</translation>
        </message>
        <message>
            <source>On a chair</source>
            <translation>Na krześle</translation>
        </message>
        <message>
            <source>On a lap</source>
            <translation>Na kolanach</translation>
        </message>
        <message>
            <source>On the floor</source>
            <translation>Na podłodze</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>Jedna ręka</translation>
        </message>
        <message>
            <source>Ordinary</source>
            <translation>Zwyczajnie</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>Pozycja</translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>Cicho</translation>
        </message>
        <message>
            <source>Resistance</source>
            <translation>Opór</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Rozmiar</translation>
        </message>
        <message>
            <source>Some strength</source>
            <translation>Trochę siły</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Szybkość</translation>
        </message>
        <message>
            <source>Standing</source>
            <translation>Na stojąco</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Kroki</translation>
        </message>
        <message>
            <source>Support</source>
            <translation>Podparcie</translation>
        </message>
        <message>
            <source>To wash</source>
            <translation>Do umycia</translation>
        </message>
        <message>
            <source>To wipe</source>
            <translation>Do wytarcia</translation>
        </message>
        <message>
            <source>Two hands</source>
            <translation>Dwie ręce</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackBoxViewModel</name>
        <message>
            <source>Handed over.</source>
            <translation>Przekazane.</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>jeszcze nikogo</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackItemViewModel</name>
        <message>
            <source>%1 in all, %2 still to go in.</source>
            <translation>Razem %1, jeszcze %2 do włożenia.</translation>
        </message>
        <message>
            <source>%1 in all. All of them are in.</source>
            <translation>Razem %1. Wszystkie w środku.</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>jeszcze nikogo</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackOffers</name>
        <message>
            <source>Pieces in a pack: a whole number from 1 to %1.</source>
            <translation>Sztuk w opakowaniu: liczba całkowita od 1 do %1.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackTableViewModel</name>
        <message>
            <source>%1 of %2 ready</source>
            <translation>Gotowe: %1 z %2</translation>
        </message>
        <message>
            <source>Handed over.</source>
            <translation>Przekazane.</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>jeszcze nikogo</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ParcelViewModel</name>
        <message>
            <source>%1 packed, %2 to pack</source>
            <translation>%1 spakowane, %2 do spakowania</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PhoneChildren</name>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1, dorosły: %2</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PieceViewModel</name>
        <message>
            <source>3 days ago</source>
            <translation>3 dni temu</translation>
        </message>
        <message>
            <source>a month</source>
            <translation>miesiąc</translation>
        </message>
        <message>
            <source>a week</source>
            <translation>tydzień</translation>
        </message>
        <message>
            <source>a week ago</source>
            <translation>tydzień temu</translation>
        </message>
        <message>
            <source>no limit of ours</source>
            <translation>bez naszej granicy</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>nieotwarte</translation>
        </message>
        <message>
            <source>today</source>
            <translation>dziś</translation>
        </message>
        <message>
            <source>two weeks</source>
            <translation>dwa tygodnie</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>wczoraj</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PlayViewModel</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>As you played it last.</source>
            <translation>Tak jak ostatnio.</translation>
        </message>
        <message>
            <source>Low vision</source>
            <translation>Słabszy wzrok</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>Jedna ręka</translation>
        </message>
        <message>
            <source>Seated</source>
            <translation>Na siedząco</translation>
        </message>
        <message>
            <source>This way it stands first next time.</source>
            <translation>Następnym razem ten sposób będzie pierwszy.</translation>
        </message>
        <message>
            <source>Tires fast</source>
            <translation>Szybkie zmęczenie</translation>
        </message>
        <message>
            <source>Without speech</source>
            <translation>Bez mowy</translation>
        </message>
        <message>
            <source>Your therapist asks for it as written.</source>
            <translation>Terapeuta prosi, żeby tak, jak napisano.</translation>
        </message>
        <message>
            <source>Your therapist asks for it this way.</source>
            <translation>Terapeuta prosi, żeby w ten sposób.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PrintViewModel</name>
        <message>
            <source>It could not be saved in %1. Is the phone full, or may nothing be written there?</source>
            <translation>Nie dało się zapisać w: %1. Czy telefon jest pełny albo nie wolno tam pisać?</translation>
        </message>
        <message>
            <source>Nobody here has said yes to sharing. That is under Crew, Shared place.</source>
            <translation>Nikt tu nie zgodził się jeszcze na udostępnianie. To jest w: Załoga, Wspólne miejsce.</translation>
        </message>
        <message>
            <source>Saved as &quot;%1&quot; in %2.</source>
            <translation>Zapisano jako „%1” w: %2.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PrintsViewModel</name>
        <message>
            <source>A card for a clothes peg</source>
            <translation>Karta na klamerkę</translation>
        </message>
        <message>
            <source>All that was asked for, by item and by box</source>
            <translation>Wszystko, o co poproszono, według rzeczy i pudełek</translation>
        </message>
        <message>
            <source>Away from home</source>
            <translation>Poza domem</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>Arkusz budowy zestawów</translation>
        </message>
        <message>
            <source>For a home without a phone: what was used up or lost</source>
            <translation>Dla domu bez telefonu: co się zużyło albo zginęło</translation>
        </message>
        <message>
            <source>Games that need nothing from the box</source>
            <translation>Zabawy, do których nic z pudełka nie trzeba</translation>
        </message>
        <message>
            <source>How things stand</source>
            <translation>Jak jest teraz</translation>
        </message>
        <message>
            <source>Label for this box</source>
            <translation>Etykieta na to pudełko</translation>
        </message>
        <message>
            <source>Labels for all boxes</source>
            <translation>Etykiety na wszystkie pudełka</translation>
        </message>
        <message>
            <source>Lid list</source>
            <translation>Lista na wieczko</translation>
        </message>
        <message>
            <source>Name, box, what to keep away, and how to reach you</source>
            <translation>Imię, pudełko, czego unikać i jak się z wami skontaktować</translation>
        </message>
        <message>
            <source>One page to hand on. You see it first.</source>
            <translation>Jedna strona do przekazania. Najpierw ją zobaczysz.</translation>
        </message>
        <message>
            <source>One week on paper</source>
            <translation>Tydzień na papierze</translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>Lista pakowania</translation>
        </message>
        <message>
            <source>Pictures, counts and the words that go with the box</source>
            <translation>Obrazki, liczby i słowa, które idą z pudełkiem</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>Runda uzupełnień</translation>
        </message>
        <message>
            <source>Squares to tick, box by box or item by item</source>
            <translation>Kwadraty do odhaczania, po pudełkach albo po rzeczach</translation>
        </message>
        <message>
            <source>The kite on paper</source>
            <translation>Latawiec na papierze</translation>
        </message>
        <message>
            <source>What to buy, and what is in each box</source>
            <translation>Co kupić i co jest w każdym pudełku</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PutBackViewModel</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 z %2</translation>
        </message>
        <message>
            <source>none to come</source>
            <translation>nic nie wraca</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::QuestionViewModel</name>
        <message>
            <source>About %1</source>
            <translation>Dotyczy: %1</translation>
        </message>
        <message>
            <source>From tomorrow anybody may answer.</source>
            <translation>Od jutra może odpowiedzieć każdy.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::Reminders</name>
        <message>
            <source>It stands on a locked screen, so it names nobody. Write it without a name.</source>
            <translation>To widać na zablokowanym ekranie, więc nie ma tam niczyjego imienia. Napisz to bez imienia.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RequestViewModel</name>
        <message>
            <source>%1 in the box, %2 on the lid list.</source>
            <translation>W pudełku %1, na liście z wieczka %2.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Prośba</translation>
        </message>
        <message>
            <source>Running low</source>
            <translation>Kończy się</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ReviseViewModel</name>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 until now</source>
            <translation>dotąd %1</translation>
        </message>
        <message>
            <source>No longer offered: %1.</source>
            <translation>Już nie do wyboru: %1.</translation>
        </message>
        <message>
            <source>Not offered until what is new is counted in: %1.</source>
            <translation>Nie do wyboru, aż nowe rzeczy będą doliczone: %1.</translation>
        </message>
        <message>
            <source>Offered as well, once it is counted in: %1.</source>
            <translation>Dojdzie do wyboru po doliczeniu: %1.</translation>
        </message>
        <message>
            <source>The home takes out: %1.</source>
            <translation>W domu trzeba wyjąć: %1.</translation>
        </message>
        <message>
            <source>The list is as it was. Change something first.</source>
            <translation>Lista jest taka jak była. Najpierw coś zmień.</translation>
        </message>
        <message>
            <source>The same activities are offered as before.</source>
            <translation>Do wyboru są te same zabawy co przedtem.</translation>
        </message>
        <message>
            <source>To be sent, and on the way until it is counted in: %1.</source>
            <translation>Do wysłania, w drodze aż do doliczenia: %1.</translation>
        </message>
        <message>
            <source>Why: say it in a few words. The family reads it beside the new list.</source>
            <translation>Dlaczego: napisz w kilku słowach. Rodzina przeczyta to obok nowej listy.</translation>
        </message>
        <message>
            <source>Why: this is too long. Say it shorter.</source>
            <translation>Dlaczego: to za długie. Napisz krócej.</translation>
        </message>
        <message>
            <source>new on the list</source>
            <translation>nowe na liście</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RoomViewModel</name>
        <message>
            <source>puts things in the mouth</source>
            <translation>bierze rzeczy do buzi</translation>
        </message>
        <message>
            <source>under three</source>
            <translation>poniżej trzech lat</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RoundViewModel</name>
        <message>
            <source>%1, asked for by %2, %3</source>
            <translation>%1, prosi %2, %3</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces</source>
            <translation>
                <numerusform>%n sztuka</numerusform>
                <numerusform>%n sztuki</numerusform>
                <numerusform>%n sztuk</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n to pack</source>
            <translation>
                <numerusform>%n do spakowania</numerusform>
                <numerusform>%n do spakowania</numerusform>
                <numerusform>%n do spakowania</numerusform>
            </translation>
        </message>
        <message>
            <source>all packed</source>
            <translation>wszystko spakowane</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::SheetViewModel</name>
        <message>
            <source>%1, and things without a price</source>
            <translation>%1 i rzeczy bez ceny</translation>
        </message>
        <message>
            <source>%1, as designed</source>
            <translation>%1, według wzoru</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Bought on %1 for %2.</source>
            <translation>Kupione %1 za %2.</translation>
        </message>
        <message>
            <source>Boxes: %1. %2</source>
            <translation>Pudełka: %1. %2</translation>
        </message>
        <message>
            <source>Nothing to buy.</source>
            <translation>Nic do kupienia.</translation>
        </message>
        <message>
            <source>On the shelf afterwards: %1.</source>
            <translation>Potem na półce: %1.</translation>
        </message>
        <message>
            <source>Set aside, and not needed any more: %1. It goes back on the shelf.</source>
            <translation>Odłożone i już niepotrzebne: %1. Wraca na półkę.</translation>
        </message>
        <message>
            <source>Still needed: %1. Spares: %2. On the shelf: %3.</source>
            <translation>Jeszcze potrzeba: %1. Zapas: %2. Na półce: %3.</translation>
        </message>
        <message>
            <source>Without a design</source>
            <translation>Bez wzoru</translation>
        </message>
        <message>
            <source>packs of %1, to buy: %2, %3</source>
            <translation>opakowania po %1, do kupienia: %2, %3</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ShelfViewModel</name>
        <message>
            <source>%1 things. Without a price: %2.</source>
            <translation>Rzeczy: %1. Bez ceny: %2.</translation>
        </message>
        <message>
            <source>%1. Lot %2</source>
            <translation>%1. Seria %2</translation>
        </message>
        <message>
            <source>No price yet</source>
            <translation>Jeszcze bez ceny</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::SupplyViewModel</name>
        <message>
            <source>A new thing</source>
            <translation>Nowa rzecz</translation>
        </message>
        <message>
            <source>Free of latex</source>
            <translation>Bez lateksu</translation>
        </message>
        <message>
            <source>Free of wheat</source>
            <translation>Bez pszenicy</translation>
        </message>
        <message>
            <source>Name: say what it is called.</source>
            <translation>Nazwa: napisz, jak to się nazywa.</translation>
        </message>
        <message>
            <source>Nothing is kept yet. Put right what is marked, then keep it.</source>
            <translation>Nic jeszcze nie zachowano. Popraw to, co zaznaczono, i zachowaj.</translation>
        </message>
        <message>
            <source>On the shelf: a whole number from 0 to %1.</source>
            <translation>Na półce: liczba całkowita od 0 do %1.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::TakeOutViewModel</name>
        <message>
            <source>No longer on the lid list</source>
            <translation>Nie ma już na liście</translation>
        </message>
        <message>
            <source>Taken out, says %1, %2.</source>
            <translation>Wyniesione, mówi %1, %2.</translation>
        </message>
        <message>
            <source>These stay</source>
            <translation>To zostaje</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ThingsFound</name>
        <message>
            <source>From the house, and this home has none.</source>
            <translation>Bierze się z domu, a w tym domu tego nie ma.</translation>
        </message>
        <message>
            <source>From the house, not from the box.</source>
            <translation>Bierze się z domu, nie z pudełka.</translation>
        </message>
        <message>
            <source>In the box: %1.</source>
            <translation>W pudełku: %1.</translation>
        </message>
        <message>
            <source>None left in the box.</source>
            <translation>W pudełku już tego nie ma.</translation>
        </message>
        <message>
            <source>Not in this box.</source>
            <translation>Nie ma tego w tym pudełku.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::TodayViewModel</name>
        <message>
            <source>%1 %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1 showed us earlier</source>
            <translation>%1: pokazane wcześniej</translation>
        </message>
        <message>
            <source>%1 showed us just now</source>
            <translation>%1: pokazane przed chwilą</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Kept for today</source>
            <translation>Zachowane na dziś</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::VideoPlanViewModel</name>
        <message>
            <source>%1 minutes. %2.</source>
            <translation>Minut: %1. %2.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>From lid list %1.</source>
            <translation>Z listy w wieczku %1.</translation>
        </message>
        <message>
            <source>Lid list %1 is out and not yet confirmed: only what it shares with the one before can be planned.</source>
            <translation>Lista w wieczku %1 jest wysłana i jeszcze niepotwierdzona: można planować tylko to, co jest też na poprzedniej.</translation>
        </message>
        <message>
            <source>Spare, if something is missing</source>
            <translation>Zapas, gdyby czegoś brakowało</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::VideoSessionViewModel</name>
        <message>
            <source>%1.</source>
            <translation>%1.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>In place of %1: not there: %2.</source>
            <translation>Zamiast: %1. Nie ma: %2.</translation>
        </message>
        <message>
            <source>Not there: %1.</source>
            <translation>Nie ma: %1.</translation>
        </message>
        <message>
            <source>Not there: %1. No spare fits.</source>
            <translation>Nie ma: %1. Zapas nie pasuje.</translation>
        </message>
        <message>
            <source>Not yet looked for: %1.</source>
            <translation>Jeszcze nie sprawdzono: %1.</translation>
        </message>
        <message>
            <source>The lid list has changed since this was planned: look the plan over.</source>
            <translation>Lista w wieczku zmieniła się od czasu planu: przejrzyj plan.</translation>
        </message>
        <message>
            <source>They have everything ready.</source>
            <translation>Mają wszystko gotowe.</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::WeekViewModel</name>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message numerus="yes">
            <source>%n minute(s)</source>
            <translation>
                <numerusform>%n minuta</numerusform>
                <numerusform>%n minuty</numerusform>
                <numerusform>%n minut</numerusform>
            </translation>
        </message>
        <message>
            <source>A good week. The very best one could be %1 in a hundred better.</source>
            <translation>Dobry tydzień. Najlepszy z możliwych byłby lepszy o %1 na sto.</translation>
        </message>
        <message>
            <source>It does not fit who is here just now. See Everything for the reason.</source>
            <translation>Nie pasuje do tych, którzy są tu teraz. Powód znajdziesz we „Wszystko”.</translation>
        </message>
        <message>
            <source>Left free</source>
            <translation>Wolne</translation>
        </message>
        <message>
            <source>Nothing left to plan</source>
            <translation>Nie ma już nic do planowania</translation>
        </message>
        <message>
            <source>Played</source>
            <translation>Za nami</translation>
        </message>
        <message>
            <source>That was all there is for this day. It begins again.</source>
            <translation>To wszystko na ten dzień. Zaczyna się od nowa.</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Dziś</translation>
        </message>
        <message>
            <source>Tomorrow</source>
            <translation>Jutro</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::WelcomeViewModel</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1. Puts things in the mouth</source>
            <translation>%1. Bierze rzeczy do buzi</translation>
        </message>
        <message numerus="yes">
            <source>%n year(s)</source>
            <translation>
                <numerusform>%n rok</numerusform>
                <numerusform>%n lata</numerusform>
                <numerusform>%n lat</numerusform>
            </translation>
        </message>
        <message>
            <source>Give the child a name, or a letter.</source>
            <translation>Podaj imię dziecka albo literę.</translation>
        </message>
        <message>
            <source>age not said</source>
            <translation>wiek niepodany</translation>
        </message>
        <message>
            <source>under one</source>
            <translation>poniżej roku</translation>
        </message>
    </context>
</TS>
