<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ur" sourcelanguage="en">
    <context>
        <name>AboutMeScreen</name>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>It forgets what you played after a year.</source>
            <translation>ایک سال بعد بھول جاتا ہے کہ آپ نے کیا کھیلا۔</translation>
        </message>
        <message>
            <source>It has no photo of you. It does not listen. It does not know where you are.</source>
            <translation>اس کے پاس آپ کی تصویر نہیں۔ یہ سنتا نہیں۔ یہ نہیں جانتا کہ آپ کہاں ہیں۔</translation>
        </message>
        <message>
            <source>It knows what is in your box, and what got lost or used up.</source>
            <translation>یہ جانتا ہے کہ آپ کے ڈبے میں کیا ہے، اور کیا کھویا یا ختم ہوا۔</translation>
        </message>
        <message>
            <source>It knows what you played, and on which day.</source>
            <translation>یہ جانتا ہے کہ آپ نے کیا کھیلا، اور کس دن۔</translation>
        </message>
        <message>
            <source>It knows which kite you tapped. After 90 days it forgets.</source>
            <translation>یہ جانتا ہے کہ آپ نے کون سی پتنگ چھوئی۔ ۹۰ دن بعد بھول جاتا ہے۔</translation>
        </message>
        <message>
            <source>Only the grown-ups with this phone can see it.</source>
            <translation>یہ صرف وہ بڑے دیکھ سکتے ہیں جن کے پاس یہ فون ہے۔</translation>
        </message>
        <message>
            <source>Read this to me</source>
            <translation>یہ مجھے پڑھ کر سنائیں</translation>
        </message>
        <message>
            <source>Stop reading</source>
            <translation>پڑھنا روکیں</translation>
        </message>
        <message>
            <source>This phone knows the name %1, and how old you are.</source>
            <translation>یہ فون %1 کا نام جانتا ہے، اور یہ کہ آپ کی عمر کیا ہے۔</translation>
        </message>
        <message>
            <source>What this keeps about me</source>
            <translation>یہ میرے بارے میں کیا رکھتا ہے</translation>
        </message>
        <message>
            <source>You can ask a grown-up to show you. You can ask them to take something out.</source>
            <translation>آپ کسی بڑے سے کہہ سکتے ہیں کہ آپ کو دکھائے۔ آپ کہہ سکتے ہیں کہ کچھ نکال دے۔</translation>
        </message>
        <message>
            <source>You never have to tap a kite.</source>
            <translation>آپ کو کبھی پتنگ چھونا لازم نہیں۔</translation>
        </message>
        <message>
            <source>Your grown-ups can see it. Others can see a part, and only if your grown-ups let them in.</source>
            <translation>آپ کے بڑے یہ دیکھ سکتے ہیں۔ دوسرے ایک حصہ، اور صرف جب آپ کے بڑے انھیں آنے دیں۔</translation>
        </message>
        <message>
            <source>Your grown-ups tell %1 what you played.</source>
            <translation>آپ کے بڑے %1 کو بتاتے ہیں کہ آپ نے کیا کھیلا۔</translation>
        </message>
    </context>
    <context>
        <name>AdditionList</name>
        <message>
            <source>Put in: %1</source>
            <translation>رکھیں: %1</translation>
        </message>
    </context>
    <context>
        <name>AgeKeys</name>
        <message>
            <source>%1 or more</source>
            <translation>‏%1 یا زیادہ</translation>
        </message>
        <message>
            <source>%1: age in years</source>
            <translation>‏%1: عمر سالوں میں</translation>
        </message>
        <message>
            <source>under 1</source>
            <translation>۱ سے کم</translation>
        </message>
    </context>
    <context>
        <name>AppScreens</name>
        <message>
            <source>Back to today</source>
            <translation>واپس آج پر</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>ہٹا دیں</translation>
        </message>
        <message>
            <source>This page could not be opened. Nothing was changed.</source>
            <translation>یہ صفحہ نہیں کھل سکا۔ کچھ نہیں بدلا۔</translation>
        </message>
    </context>
    <context>
        <name>AreaChoice</name>
        <message>
            <source>Which part of daily life is it about? The offers go by this.</source>
            <translation>یہ روزمرہ زندگی کے کس حصے کے بارے میں ہے؟ تجاویز اسی پر چلتی ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>AvoidQuestion</name>
        <message>
            <source>%1 %2</source>
            <translation>‏%1 %2</translation>
        </message>
        <message>
            <source>Don't know</source>
            <translation>پتا نہیں</translation>
        </message>
        <message>
            <source>No</source>
            <translation>نہیں</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>ہاں</translation>
        </message>
    </context>
    <context>
        <name>AwayPage</name>
        <message>
            <source>&quot;Don't know&quot; is a good answer. It counts as yes until somebody knows.</source>
            <translation>“پتا نہیں” اچھا جواب ہے۔ جب تک کسی کو پتا نہ ہو وہ “ہاں” گنا جاتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>BeforeAndNow</name>
        <message>
            <source>adult: hold</source>
            <translation>بڑے: دبائے رکھیں</translation>
        </message>
        <message>
            <source>before</source>
            <translation>پہلے</translation>
        </message>
        <message>
            <source>now</source>
            <translation>اب</translation>
        </message>
    </context>
    <context>
        <name>BoardPane</name>
        <message>
            <source>What you wrote is not kept yet. Keep it, or go back, before you open something else.</source>
            <translation>جو آپ نے لکھا وہ ابھی محفوظ نہیں۔ کچھ اور کھولنے سے پہلے اسے محفوظ کریں یا واپس جائیں۔</translation>
        </message>
    </context>
    <context>
        <name>BoxOfChildScreen</name>
        <message>
            <source>%1's box</source>
            <translation>‏%1 کا ڈبہ</translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>کام کی میز پر واپس</translation>
        </message>
        <message>
            <source>Change the box</source>
            <translation>ڈبہ بدلیں</translation>
        </message>
        <message>
            <source>Goals</source>
            <translation>مقاصد</translation>
        </message>
        <message>
            <source>Handing over</source>
            <translation>حوالے کرنا</translation>
        </message>
        <message>
            <source>Plan a video session</source>
            <translation>ویڈیو ملاقات کی تیاری</translation>
        </message>
        <message>
            <source>Shared by the family</source>
            <translation>جو گھر والے بتاتے ہیں</translation>
        </message>
        <message>
            <source>Six lines: the parent does each</source>
            <translation>چھ باتیں: ہر ایک ماں یا باپ کریں</translation>
        </message>
        <message>
            <source>To print</source>
            <translation>چھاپنے کے لیے</translation>
        </message>
        <message>
            <source>What is asked for</source>
            <translation>کیا مانگا گیا ہے</translation>
        </message>
    </context>
    <context>
        <name>BoxPartCard</name>
        <message>
            <source>%1, why: %2</source>
            <translation>‏%1، کیوں: %2</translation>
        </message>
        <message>
            <source>As designed</source>
            <translation>نمونے کے مطابق</translation>
        </message>
        <message>
            <source>In your own words, if you like</source>
            <translation>چاہیں تو اپنے الفاظ میں</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>نہ رکھیں</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک زیادہ: %1</translation>
        </message>
        <message>
            <source>Put in instead: %1</source>
            <translation>اس کی جگہ رکھیں: %1</translation>
        </message>
        <message>
            <source>Why does it differ?</source>
            <translation>یہ مختلف کیوں ہے؟</translation>
        </message>
        <message>
            <source>Why it differs</source>
            <translation>مختلف ہونے کی وجہ</translation>
        </message>
    </context>
    <context>
        <name>BoxScreen</name>
        <message>
            <source>%1's box</source>
            <translation>‏%1 کا ڈبا</translation>
        </message>
        <message>
            <source>Box is here</source>
            <translation>ڈبا یہاں ہے</translation>
        </message>
        <message>
            <source>Count it all</source>
            <translation>سب گنیں</translation>
        </message>
        <message>
            <source>Count it all together</source>
            <translation>سب مل کر گنیں</translation>
        </message>
        <message>
            <source>Not here</source>
            <translation>یہاں نہیں</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>آج لکھا گیا</translation>
        </message>
        <message>
            <source>Nothing on the lid list</source>
            <translation>ڈھکن کی فہرست میں کچھ نہیں</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>کاغذ پر</translation>
        </message>
        <message>
            <source>Play needs nothing from the box, then. Count again when something has come.</source>
            <translation>تو پھر کھیل میں ڈبے کی کوئی چیز نہیں چاہیے۔ کچھ آئے تو دوبارہ گنیں۔</translation>
        </message>
        <message>
            <source>Print the new list</source>
            <translation>نئی فہرست چھاپیں</translation>
        </message>
        <message>
            <source>Said on this phone: not here. Only games that need nothing from the box are offered.</source>
            <translation>اس فون پر بتایا گیا: یہاں نہیں۔ صرف وہ کھیل دکھائے جاتے ہیں جنہیں ڈبے سے کچھ نہیں چاہیے۔</translation>
        </message>
        <message>
            <source>The last count was a month ago.</source>
            <translation>آخری گنتی ایک مہینہ پہلے ہوئی تھی۔</translation>
        </message>
        <message>
            <source>The lid list and more, to print</source>
            <translation>ڈھکن کی فہرست اور مزید، چھاپنے کے لیے</translation>
        </message>
        <message>
            <source>The new list is on the lid</source>
            <translation>نئی فہرست ڈھکن پر ہے</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>دوبارہ کوشش</translation>
        </message>
        <message>
            <source>What to ask for</source>
            <translation>کیا مانگنا ہے</translation>
        </message>
    </context>
    <context>
        <name>BuildBoxScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>واپس، کچھ نہیں بدلا</translation>
        </message>
        <message>
            <source>Box %1</source>
            <translation>ڈبہ %1</translation>
        </message>
        <message>
            <source>Fill it in for %1</source>
            <translation>‏%1 کے لیے بھریں</translation>
        </message>
        <message>
            <source>Fill it in for a child: what the home must avoid is swapped or left out.</source>
            <translation>بچے کے لیے بھریں: گھر کو جس سے بچنا ہے وہ بدلا یا چھوڑا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Keep this box</source>
            <translation>یہ ڈبہ محفوظ کریں</translation>
        </message>
        <message>
            <source>Left hand</source>
            <translation>بایاں ہاتھ</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>نہیں بتایا</translation>
        </message>
        <message>
            <source>Right hand</source>
            <translation>دایاں ہاتھ</translation>
        </message>
        <message>
            <source>Take this box out of the build</source>
            <translation>یہ ڈبہ مجموعے سے نکالیں</translation>
        </message>
        <message>
            <source>Which hand cuts?</source>
            <translation>کون سا ہاتھ کاٹتا ہے؟</translation>
        </message>
        <message>
            <source>Whose box, by alias; empty: nobody's yet</source>
            <translation>کس کا ڈبہ (عرفی نام)؛ خالی: ابھی کسی کا نہیں</translation>
        </message>
    </context>
    <context>
        <name>BuildHead</name>
        <message>
            <source>A day earlier</source>
            <translation>ایک دن پہلے</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>ایک دن بعد</translation>
        </message>
        <message>
            <source>Currency, three letters</source>
            <translation>کرنسی، تین حروف</translation>
        </message>
        <message>
            <source>Name of the build</source>
            <translation>مجموعے کا نام</translation>
        </message>
        <message>
            <source>Of what play uses up, rounded up to a whole piece.</source>
            <translation>جو کھیل میں ختم ہوتا ہے اس کا، پورے عدد تک اوپر۔</translation>
        </message>
        <message>
            <source>One percent less</source>
            <translation>ایک فیصد کم</translation>
        </message>
        <message>
            <source>One percent more</source>
            <translation>ایک فیصد زیادہ</translation>
        </message>
        <message>
            <source>Packed on %1</source>
            <translation>بھرنے کا دن: %1</translation>
        </message>
        <message>
            <source>Spares, percent</source>
            <translation>فالتو، فیصد</translation>
        </message>
        <message>
            <source>Spring boxes</source>
            <translation>بہار کے ڈبے</translation>
        </message>
    </context>
    <context>
        <name>BuildScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1، %2 کے لیے</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Boxes: %1</source>
            <translation>ڈبے: %1</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>خریداری کا پرچہ</translation>
        </message>
        <message>
            <source>Change name, day, spares</source>
            <translation>نام، دن، فالتو بدلیں</translation>
        </message>
        <message>
            <source>Keep this</source>
            <translation>یہ محفوظ کریں</translation>
        </message>
        <message>
            <source>Leave it as it was</source>
            <translation>جیسا تھا ویسا رہنے دیں</translation>
        </message>
        <message>
            <source>Special</source>
            <translation>خاص</translation>
        </message>
        <message>
            <source>There is no box in it yet</source>
            <translation>اس میں ابھی کوئی ڈبہ نہیں</translation>
        </message>
    </context>
    <context>
        <name>BuildSheetScreen</name>
        <message>
            <source>At the till: whole packs, spares among them. What is left over lies on the shelf afterwards, without a lot until you write what stands on the new packs.</source>
            <translation>دکان پر: پورے پیکٹ، فالتو سمیت۔ جو بچے وہ بعد میں شیلف پر رہتا ہے، لاٹ کے بغیر، جب تک آپ نئے پیکٹوں پر لکھا ہوا درج نہ کریں۔</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>خرید لیا</translation>
        </message>
        <message>
            <source>Build sheet: %1</source>
            <translation>خریداری کا پرچہ: %1</translation>
        </message>
        <message>
            <source>Everything for these boxes is there. A box that is added is bought for by itself.</source>
            <translation>ان ڈبوں کا سارا سامان موجود ہے۔ نئے ڈبے کے لیے الگ سے خریدا جاتا ہے۔</translation>
        </message>
        <message>
            <source>In each of them: %1</source>
            <translation>ان میں سے ہر ایک میں: %1</translation>
        </message>
        <message>
            <source>Is all of it bought, at these prices?</source>
            <translation>کیا یہ سب ان قیمتوں پر خرید لیا گیا ہے؟</translation>
        </message>
        <message>
            <source>Is all of it set aside?</source>
            <translation>کیا یہ سب الگ رکھ دیا گیا ہے؟</translation>
        </message>
        <message>
            <source>It is set aside for these boxes, and what is left over is on the shelf. This cannot be taken back; the shelf can be put right by hand.</source>
            <translation>یہ ان ڈبوں کے لیے الگ رکھا جائے گا، اور جو بچے وہ شیلف پر ہوگا۔ یہ واپس نہیں لیا جا سکتا؛ شیلف ہاتھ سے درست کی جا سکتی ہے۔</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>ابھی نہیں</translation>
        </message>
        <message>
            <source>Set aside</source>
            <translation>الگ رکھیں</translation>
        </message>
        <message>
            <source>To be put right first</source>
            <translation>پہلے یہ ٹھیک کریں</translation>
        </message>
        <message>
            <source>What is in each box</source>
            <translation>ہر ڈبے میں کیا ہے</translation>
        </message>
        <message>
            <source>What the pieces in one box are worth: each its share of its pack. This is not what you pay today.</source>
            <translation>ایک ڈبے کی چیزوں کی قیمت: ہر ایک پیکٹ میں اپنے حصے کی۔ یہ وہ نہیں جو آپ آج دیتے ہیں۔</translation>
        </message>
        <message>
            <source>What you spend today</source>
            <translation>آج آپ کا خرچ</translation>
        </message>
        <message>
            <source>Yes, all of it</source>
            <translation>ہاں، سب</translation>
        </message>
    </context>
    <context>
        <name>BuildsScreen</name>
        <message>
            <source>A build is a pile of boxes that are bought for and packed together.</source>
            <translation>مجموعہ وہ ڈبے ہیں جن کا سامان ساتھ خریدا اور ساتھ بھرا جاتا ہے۔</translation>
        </message>
        <message>
            <source>A build is a pile of boxes that are bought for and packed together. First say what belongs in a kind of box.</source>
            <translation>مجموعہ وہ ڈبے ہیں جن کا سامان ساتھ خریدا اور ساتھ بھرا جاتا ہے۔ پہلے بتائیں ایک قسم کے ڈبے میں کیا ہوتا ہے۔</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Begin this build</source>
            <translation>یہ مجموعہ شروع کریں</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>مجموعے اور خریداری</translation>
        </message>
        <message>
            <source>Kinds of box</source>
            <translation>ڈبوں کی قسمیں</translation>
        </message>
        <message>
            <source>New build</source>
            <translation>نیا مجموعہ</translation>
        </message>
        <message>
            <source>No build yet</source>
            <translation>ابھی کوئی مجموعہ نہیں</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>ابھی نہیں</translation>
        </message>
        <message>
            <source>Shelf and shops</source>
            <translation>شیلف اور دکانیں</translation>
        </message>
        <message>
            <source>What belongs in each, and how much play it brings.</source>
            <translation>ہر ایک میں کیا ہوتا ہے اور اس سے کتنا کھیل ملتا ہے۔</translation>
        </message>
        <message>
            <source>What builds are made of</source>
            <translation>مجموعے کس سے بنتے ہیں</translation>
        </message>
        <message>
            <source>What lies there, packs and prices.</source>
            <translation>وہاں کیا ہے، پیکٹ اور قیمتیں۔</translation>
        </message>
    </context>
    <context>
        <name>BurstScreen</name>
        <message>
            <source>All pieces found</source>
            <translation>سب ٹکڑے مل گئے</translation>
        </message>
        <message>
            <source>Can't find a piece</source>
            <translation>ایک ٹکڑا نہیں مل رہا</translation>
        </message>
    </context>
    <context>
        <name>CameraLink</name>
        <message>
            <source>Read the squares with the camera</source>
            <translation>کیمرے سے خانے پڑھیں</translation>
        </message>
    </context>
    <context>
        <name>CameraPage</name>
        <message>
            <source>Hold this phone so that the squares of the other one lie inside the frame. They stand below its nine words.</source>
            <translation>یہ فون ایسے پکڑیں کہ دوسرے فون کے خانے چوکھٹے کے اندر آ جائیں۔ وہ وہاں نو لفظوں کے نیچے ہیں۔</translation>
        </message>
        <message>
            <source>No picture is kept. The camera goes off when the squares are read, or when you leave this page.</source>
            <translation>کوئی تصویر نہیں رکھی جاتی۔ خانے پڑھ لیے جانے پر، یا آپ کے یہ صفحہ چھوڑنے پر، کیمرا بند ہو جاتا ہے۔</translation>
        </message>
        <message>
            <source>The camera shows nothing. Perhaps another app is using it, or Lidlark may not. The nine words do the same.</source>
            <translation>کیمرا کچھ نہیں دکھا رہا۔ شاید کوئی اور ایپ اسے استعمال کر رہی ہے، یا Lidlark کو اجازت نہیں۔ نو لفظ بھی یہی کام کرتے ہیں۔</translation>
        </message>
        <message>
            <source>These squares say something else. Lidlark's stand below the nine words.</source>
            <translation>ان خانوں میں کچھ اور ہے۔ Lidlark کے خانے نو لفظوں کے نیچے ہیں۔</translation>
        </message>
        <message>
            <source>What the camera sees</source>
            <translation>جو کیمرا دیکھ رہا ہے</translation>
        </message>
    </context>
    <context>
        <name>CatalogueFacts</name>
        <message>
            <source>%1. %2</source>
            <translation>‏%1۔ %2</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>الرجی والی چیزیں</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>دیکھ بھال</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>احتیاط</translation>
        </message>
        <message>
            <source>How long it keeps</source>
            <translation>کتنی دیر چلتا ہے</translation>
        </message>
        <message>
            <source>In a standard box</source>
            <translation>عام ڈبے میں</translation>
        </message>
        <message>
            <source>In its place</source>
            <translation>اس کی جگہ</translation>
        </message>
        <message>
            <source>Measures</source>
            <translation>پیمائش</translation>
        </message>
        <message>
            <source>Never issued again to another child.</source>
            <translation>کسی دوسرے بچے کو دوبارہ نہیں دیا جاتا۔</translation>
        </message>
        <message>
            <source>None known</source>
            <translation>کوئی معلوم نہیں</translation>
        </message>
        <message>
            <source>Nothing small and no long cord.</source>
            <translation>نہ کوئی چھوٹی چیز، نہ لمبی ڈوری۔</translation>
        </message>
        <message>
            <source>Nothing: it has no size to go by.</source>
            <translation>کچھ نہیں: اس کا کوئی ناپ نہیں جس سے اندازہ ہو۔</translation>
        </message>
        <message>
            <source>Washing</source>
            <translation>دھلائی</translation>
        </message>
        <message>
            <source>What follows from them</source>
            <translation>ان سے کیا نکلتا ہے</translation>
        </message>
    </context>
    <context>
        <name>ChildPage</name>
        <message>
            <source>How many years old?</source>
            <translation>عمر کتنی ہے؟</translation>
        </message>
        <message>
            <source>No surname, no birth date. Everything stays on this phone.</source>
            <translation>نہ خاندانی نام، نہ پیدائش کی تاریخ۔ سب کچھ اسی فون پر رہتا ہے۔</translation>
        </message>
        <message>
            <source>Whose box is it? A first name or a letter</source>
            <translation>ڈبا کس کا ہے؟ پہلا نام یا ایک حرف</translation>
        </message>
        <message>
            <source>Without an age only a few things are offered, the safest ones. No surname, no birth date. Everything stays on this phone.</source>
            <translation>عمر کے بغیر صرف چند چیزیں دکھائی جاتی ہیں، جو سب سے محفوظ ہیں۔ نہ خاندانی نام، نہ پیدائش کی تاریخ۔ سب کچھ اسی فون پر رہتا ہے۔</translation>
        </message>
        <message>
            <source>Without an age only a few things are offered, the safest ones. No surname, no birth date. Whoever is in the crew of this box reads it.</source>
            <translation>عمر کے بغیر صرف چند سب سے محفوظ چیزیں پیش ہوتی ہیں۔ نہ خاندانی نام، نہ تاریخِ پیدائش۔ اس ڈبے کے سب ساتھی اسے پڑھتے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>ChildSwitch</name>
        <message>
            <source>%1's box</source>
            <translation>‏%1 کا ڈبا</translation>
        </message>
    </context>
    <context>
        <name>ChooseScreen</name>
        <message>
            <source>Read aloud</source>
            <translation>پڑھ کر سنائیں</translation>
        </message>
        <message>
            <source>You choose. We play together.</source>
            <translation>تم چنو۔ مل کر کھیلیں گے۔</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>بڑے: دبائے رکھیں</translation>
        </message>
        <message>
            <source>adult: hold to begin</source>
            <translation>بڑے: شروع کرنے کو دبائے رکھیں</translation>
        </message>
        <message>
            <source>hold</source>
            <translation>دبائے رکھیں</translation>
        </message>
    </context>
    <context>
        <name>ClinicScreen</name>
        <message>
            <source>Begin</source>
            <translation>شروع</translation>
        </message>
        <message>
            <source>From your own other phone, or a colleague's with whom you pack</source>
            <translation>آپ کے اپنے دوسرے فون سے، یا اس ساتھی کے فون سے جس کے ساتھ آپ ڈبے بھرتے ہیں</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>میرے پاس کوڈ ہے</translation>
        </message>
        <message>
            <source>Of children you write a first name or a letter: no surname, no birth date, no diagnosis.</source>
            <translation>بچوں کا صرف پہلا نام یا ایک حرف لکھیں: نہ خاندانی نام، نہ تاریخِ پیدائش، نہ تشخیص۔</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>ایک صفحہ پیچھے</translation>
        </message>
        <message>
            <source>What belongs in a box, what to buy, packing, and which box needs what: all on this phone, without an account and without a signal.</source>
            <translation>ڈبے میں کیا ہو، کیا خریدنا ہے، ڈبے بھرنا، اور کس ڈبے کو کیا چاہیے: سب اسی فون پر، بغیر کھاتے اور بغیر سگنل کے۔</translation>
        </message>
        <message>
            <source>What do families call you?</source>
            <translation>خاندان آپ کو کیا کہتے ہیں؟</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>پہلے آپ کا نام؛ ایک حرف بھی چلے گا۔</translation>
        </message>
        <message>
            <source>Your workbench</source>
            <translation>آپ کی کام کی میز</translation>
        </message>
    </context>
    <context>
        <name>CoachingScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Handing over to %1's home</source>
            <translation>‏%1 کے گھر حوالے کرنا</translation>
        </message>
        <message>
            <source>The parent does each of these while you are there. The ticks stay on this phone.</source>
            <translation>یہ ہر کام ماں یا باپ آپ کے سامنے کریں۔ نشان اسی فون پر رہتے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>CodeShown</name>
        <message>
            <source>%1. %2</source>
            <translation>‏%1. %2</translation>
        </message>
        <message>
            <source>A new code</source>
            <translation>نیا کوڈ</translation>
        </message>
        <message>
            <source>For one phone, until %1. After that a new code takes one tap.</source>
            <translation>ایک فون کے لیے، %1 تک۔ اس کے بعد نیا کوڈ ایک بار چھونے سے بنتا ہے۔</translation>
        </message>
        <message>
            <source>On the other phone: open Lidlark, tap &quot;I have a code&quot;, and type these nine words, in this order.</source>
            <translation>دوسرے فون پر: Lidlark کھولیں، “میرے پاس کوڈ ہے” چھوئیں، اور یہ نو لفظ اسی ترتیب میں لکھیں۔</translation>
        </message>
        <message>
            <source>The code in squares, for another phone's camera</source>
            <translation>خانوں میں کوڈ، دوسرے فون کے کیمرے کے لیے</translation>
        </message>
        <message>
            <source>The same in squares, for its camera</source>
            <translation>یہی خانوں میں، اس کے کیمرے کے لیے</translation>
        </message>
        <message>
            <source>Waiting for the other phone.</source>
            <translation>دوسرے فون کا انتظار ہے۔</translation>
        </message>
    </context>
    <context>
        <name>CountOne</name>
        <message>
            <source>All %1 here</source>
            <translation>سب %1 یہاں</translation>
        </message>
        <message>
            <source>It is here</source>
            <translation>یہاں ہے</translation>
        </message>
        <message>
            <source>None here</source>
            <translation>یہاں کوئی نہیں</translation>
        </message>
        <message>
            <source>One more: %1, %2 counted</source>
            <translation>ایک اور: %1، %2 گنے گئے</translation>
        </message>
    </context>
    <context>
        <name>CountResult</name>
        <message>
            <source>All as expected</source>
            <translation>سب پورا ہے</translation>
        </message>
        <message>
            <source>The count holds from now on, on every phone that shares the box.</source>
            <translation>یہ گنتی اب سے ہر اس فون پر چلتی ہے جس کا ڈبا یہی ہے۔</translation>
        </message>
        <message>
            <source>What differs</source>
            <translation>کیا مختلف ہے</translation>
        </message>
    </context>
    <context>
        <name>CountScreen</name>
        <message>
            <source>%1 of %2</source>
            <translation>‏%2 میں سے %1</translation>
        </message>
        <message>
            <source>Back to the box</source>
            <translation>واپس ڈبے پر</translation>
        </message>
        <message>
            <source>Count it all</source>
            <translation>سب گنیں</translation>
        </message>
        <message>
            <source>Count it first</source>
            <translation>پہلے گنیں</translation>
        </message>
        <message>
            <source>Count together what lies in the box now, and look each one over. What is missing is only missing.</source>
            <translation>ڈبے میں اس وقت جو ہے مل کر گنیں، اور ہر چیز دیکھیں۔ جو نہیں ہے وہ بس نہیں ہے۔</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>گنا گیا</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>اگلا</translation>
        </message>
        <message>
            <source>One back</source>
            <translation>ایک پیچھے</translation>
        </message>
        <message>
            <source>One by one, with the pictures</source>
            <translation>ایک ایک کر کے، تصویروں کے ساتھ</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک اور: %1</translation>
        </message>
        <message>
            <source>See the list</source>
            <translation>فہرست دیکھیں</translation>
        </message>
        <message>
            <source>That's what is here</source>
            <translation>یہاں یہی ہے</translation>
        </message>
    </context>
    <context>
        <name>CrewLinks</name>
        <message>
            <source>Another parent, family, a guest, the therapist</source>
            <translation>دوسرے والدین، خاندان، مہمان، تھراپسٹ</translation>
        </message>
        <message>
            <source>For %1 to read, or to have read aloud</source>
            <translation>‏%1 کے پڑھنے کے لیے، یا پڑھ کر سنانے کے لیے</translation>
        </message>
        <message>
            <source>Hand over a file</source>
            <translation>فائل دیں</translation>
        </message>
        <message>
            <source>Let somebody in</source>
            <translation>کسی کو اندر آنے دیں</translation>
        </message>
        <message>
            <source>None. Sharing is off.</source>
            <translation>کوئی نہیں۔ بانٹنا بند ہے۔</translation>
        </message>
        <message>
            <source>Shared place</source>
            <translation>مشترک جگہ</translation>
        </message>
        <message>
            <source>Sharing with others</source>
            <translation>دوسروں کے ساتھ بانٹنا</translation>
        </message>
        <message>
            <source>The phone of somebody who packs too</source>
            <translation>کسی ایسے کا فون جو ساتھ ڈبے بھرتا ہے</translation>
        </message>
        <message>
            <source>What each can see</source>
            <translation>کون کیا دیکھ سکتا ہے</translation>
        </message>
        <message>
            <source>What this keeps about me</source>
            <translation>یہ میرے بارے میں کیا رکھتا ہے</translation>
        </message>
        <message>
            <source>Where there is no network: on a stick, or from phone to phone</source>
            <translation>جہاں نیٹ ورک نہ ہو: اسٹک پر، یا فون سے فون پر</translation>
        </message>
    </context>
    <context>
        <name>CrewScreen</name>
        <message>
            <source>Crew</source>
            <translation>ساتھی</translation>
        </message>
        <message>
            <source>Families on this phone</source>
            <translation>اس فون پر خاندان</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>گھر کا پرچہ</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>ترتیبات</translation>
        </message>
        <message>
            <source>Text size, light and dark</source>
            <translation>حروف کا سائز، روشن اور گہرا</translation>
        </message>
        <message>
            <source>Text size, light and dark, the kite</source>
            <translation>حروف کا سائز، روشن اور گہرا، پتنگ</translation>
        </message>
        <message>
            <source>What Lidlark is not</source>
            <translation>‏Lidlark کیا نہیں ہے</translation>
        </message>
        <message>
            <source>Who lives here, what must stay away</source>
            <translation>یہاں کون رہتا ہے، کن چیزوں سے بچنا لازم ہے</translation>
        </message>
    </context>
    <context>
        <name>DesignScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>واپس، کچھ نہیں بدلا</translation>
        </message>
        <message>
            <source>Begin with our standard box</source>
            <translation>ہمارے عام ڈبے سے شروع کریں</translation>
        </message>
        <message>
            <source>Keep this kind of box</source>
            <translation>ڈبے کی یہ قسم محفوظ کریں</translation>
        </message>
        <message>
            <source>New kind of box</source>
            <translation>ڈبے کی نئی قسم</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک زیادہ: %1</translation>
        </message>
        <message>
            <source>Standard box</source>
            <translation>عام ڈبہ</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>نکالیں</translation>
        </message>
        <message>
            <source>Use this kind of box no more</source>
            <translation>ڈبے کی یہ قسم اب استعمال نہ کریں</translation>
        </message>
        <message>
            <source>What this kind of box is called</source>
            <translation>ڈبے کی اس قسم کا نام</translation>
        </message>
    </context>
    <context>
        <name>DesignsScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Kinds of box</source>
            <translation>ڈبوں کی قسمیں</translation>
        </message>
        <message>
            <source>New kind of box</source>
            <translation>ڈبے کی نئی قسم</translation>
        </message>
        <message>
            <source>No kind of box yet</source>
            <translation>ابھی ڈبے کی کوئی قسم نہیں</translation>
        </message>
        <message>
            <source>Say once what belongs in the standard box. Each child's box is then written as what differs from it.</source>
            <translation>ایک بار بتائیں عام ڈبے میں کیا ہوتا ہے۔ پھر ہر بچے کے ڈبے میں صرف فرق لکھا جاتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>DifferentRow</name>
        <message>
            <source>It was in a mouth</source>
            <translation>یہ منہ میں گیا تھا</translation>
        </message>
        <message>
            <source>It was left open</source>
            <translation>یہ کھلا رہ گیا تھا</translation>
        </message>
        <message>
            <source>Left open: noted.</source>
            <translation>کھلا رہ گیا: لکھ لیا۔</translation>
        </message>
    </context>
    <context>
        <name>DifferentScreen</name>
        <message>
            <source>Back to the tray</source>
            <translation>واپس ٹرے پر</translation>
        </message>
        <message>
            <source>How many?</source>
            <translation>کتنے؟</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>کچھ مختلف ہے</translation>
        </message>
        <message>
            <source>The rest is back</source>
            <translation>باقی واپس ہے</translation>
        </message>
    </context>
    <context>
        <name>DriedOutScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>It has dried out</source>
            <translation>یہ سوکھ گیا ہے</translation>
        </message>
        <message>
            <source>It is soft again</source>
            <translation>یہ پھر نرم ہے</translation>
        </message>
        <message>
            <source>Still hard: throw it away</source>
            <translation>اب بھی سخت: پھینک دیں</translation>
        </message>
        <message>
            <source>That happens. It keeps its date if it is rescued.</source>
            <translation>ایسا ہو جاتا ہے۔ بچا لیا جائے تو تاریخ وہی رہتی ہے۔</translation>
        </message>
        <message>
            <source>Throw it away</source>
            <translation>پھینک دیں</translation>
        </message>
        <message>
            <source>Thrown away, another is asked for.</source>
            <translation>پھینک دیا، دوسرا مانگا گیا ہے۔</translation>
        </message>
        <message>
            <source>Try to rescue it</source>
            <translation>بچانے کی کوشش</translation>
        </message>
    </context>
    <context>
        <name>EmergencyScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>What happened?</source>
            <translation>کیا ہوا؟</translation>
        </message>
    </context>
    <context>
        <name>EndedScreen</name>
        <message>
            <source>The box, closed</source>
            <translation>بند ڈبا</translation>
        </message>
        <message>
            <source>The family can ask you again.</source>
            <translation>خاندان آپ کو پھر بلا سکتا ہے۔</translation>
        </message>
        <message>
            <source>They ended on %1. What you noted stays with the family, signed %2.</source>
            <translation>یہ وقت %1 کو ختم ہوا۔ آپ کا لکھا خاندان کے پاس رہتا ہے، %2 کے نام سے۔</translation>
        </message>
        <message>
            <source>Your days with this box are over</source>
            <translation>اس ڈبے کے ساتھ آپ کا وقت ختم ہوا</translation>
        </message>
    </context>
    <context>
        <name>EverythingScreen</name>
        <message>
            <source>Back to today</source>
            <translation>واپس آج پر</translation>
        </message>
        <message>
            <source>Everything for %1</source>
            <translation>‏%1 کے لیے سب کچھ</translation>
        </message>
        <message>
            <source>Find by name, thing or skill</source>
            <translation>نام، چیز یا ہنر سے ڈھونڈیں</translation>
        </message>
        <message>
            <source>Fits just now</source>
            <translation>ابھی مناسب ہے</translation>
        </message>
        <message>
            <source>Held back, and why</source>
            <translation>جو روکے گئے، اور کیوں</translation>
        </message>
        <message>
            <source>Nothing is called that</source>
            <translation>اس نام کا کچھ نہیں</translation>
        </message>
        <message>
            <source>Nothing to play is called that.</source>
            <translation>اس نام کا کوئی کھیل نہیں۔</translation>
        </message>
        <message>
            <source>Things</source>
            <translation>چیزیں</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>دوبارہ کوشش</translation>
        </message>
        <message>
            <source>Try one word, such as dough or paper.</source>
            <translation>ایک لفظ لکھیں، جیسے آٹا یا کاغذ۔</translation>
        </message>
    </context>
    <context>
        <name>ExceptionRow</name>
        <message>
            <source>%1 %2: %3</source>
            <translation>‏%2: %1۔ %3</translation>
        </message>
    </context>
    <context>
        <name>FactCard</name>
        <message>
            <source>What the catalogue knows</source>
            <translation>کیٹلاگ کیا جانتا ہے</translation>
        </message>
    </context>
    <context>
        <name>Families</name>
        <message>
            <source>Another family's box</source>
            <translation>کسی اور خاندان کا ڈبا</translation>
        </message>
        <message>
            <source>Bring it back</source>
            <translation>واپس لائیں</translation>
        </message>
        <message>
            <source>Bring it back: %1</source>
            <translation>واپس لائیں: %1</translation>
        </message>
        <message>
            <source>For whoever looks after several children. Nothing is shared between the families.</source>
            <translation>ان کے لیے جو کئی بچوں کی دیکھ بھال کرتے ہیں۔ ایک خاندان کی کوئی بات دوسرے تک نہیں جاتی۔</translation>
        </message>
        <message>
            <source>Gone for good when Lidlark is closed.</source>
            <translation>‏Lidlark بند ہوتے ہی ہمیشہ کے لیے چلا جائے گا۔</translation>
        </message>
        <message>
            <source>Off this phone: %1</source>
            <translation>اس فون سے ہٹایا گیا: %1</translation>
        </message>
    </context>
    <context>
        <name>FewOffers</name>
        <message>
            <source>Everything</source>
            <translation>سب کچھ</translation>
        </message>
        <message>
            <source>Nothing fits just now</source>
            <translation>ابھی کچھ مناسب نہیں</translation>
        </message>
    </context>
    <context>
        <name>FloorScreen</name>
        <message>
            <source>First say above what is found</source>
            <translation>پہلے اوپر بتائیں کہ کیا ملا</translation>
        </message>
        <message>
            <source>Floor checked, not found</source>
            <translation>فرش دیکھا، نہیں ملا</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>مل گیا</translation>
        </message>
    </context>
    <context>
        <name>ForgetKites</name>
        <message>
            <source>Forget every kite %1 has shown</source>
            <translation>‏%1 کی دکھائی ہر پتنگ بھول جائیں</translation>
        </message>
        <message>
            <source>Forget them</source>
            <translation>بھول جائیں</translation>
        </message>
        <message>
            <source>Forgotten.</source>
            <translation>بھلا دیں۔</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>رہنے دیں</translation>
        </message>
        <message>
            <source>They are gone for good then, here and on the other phones of this home.</source>
            <translation>پھر وہ ہمیشہ کے لیے چلی جاتی ہیں، یہاں سے بھی اور اس گھر کے باقی فونوں سے بھی۔</translation>
        </message>
        <message>
            <source>They go by themselves after 90 days.</source>
            <translation>۹۰ دن بعد وہ خود چلی جاتی ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>FoundRow</name>
        <message>
            <source>%1: %2 found</source>
            <translation>‏%1: %2 ملے</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>مل گیا</translation>
        </message>
        <message>
            <source>How many are found?</source>
            <translation>کتنے ملے؟</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک اور: %1</translation>
        </message>
    </context>
    <context>
        <name>GoalCard</name>
        <message>
            <source>How is it going?</source>
            <translation>کیسا چل رہا ہے؟</translation>
        </message>
        <message>
            <source>How is it going? %1</source>
            <translation>کیسا چل رہا ہے؟ %1</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>اس کے بعد</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>ابھی</translation>
        </message>
        <message>
            <source>Now, and further than we expected</source>
            <translation>ابھی، ہماری توقع سے آگے</translation>
        </message>
        <message>
            <source>The whole goal</source>
            <translation>پورا مقصد</translation>
        </message>
        <message>
            <source>The whole goal: %1</source>
            <translation>پورا مقصد: %1</translation>
        </message>
    </context>
    <context>
        <name>GoalEndingScreen</name>
        <message>
            <source>A goal comes to an end</source>
            <translation>مقصد ختم ہوتا ہے</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Choose one of the three</source>
            <translation>تینوں میں سے ایک چنیں</translation>
        </message>
        <message>
            <source>End this goal</source>
            <translation>یہ مقصد ختم کریں</translation>
        </message>
        <message>
            <source>It then stands under “Earlier goals”, with its steps and all that was said of it. The offers no longer go by it. You can take it up again.</source>
            <translation>پھر یہ ”پہلے کے مقاصد“ میں رہے گا، اپنے درجوں اور اس پر کہی گئی سب باتوں کے ساتھ۔ تجاویز اس پر نہیں چلیں گی۔ اسے دوبارہ لیا جا سکتا ہے۔</translation>
        </message>
        <message>
            <source>Why, in your own words (may be left out)</source>
            <translation>کیوں، اپنے الفاظ میں (چھوڑ سکتے ہیں)</translation>
        </message>
    </context>
    <context>
        <name>GoalNumbersScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Counts less: %1</source>
            <translation>کم گنا جائے: %1</translation>
        </message>
        <message>
            <source>Counts more: %1</source>
            <translation>زیادہ گنا جائے: %1</translation>
        </message>
        <message>
            <source>Goals stand in the notebook, in words.</source>
            <translation>مقاصد کاپی میں، الفاظ میں ہیں۔</translation>
        </message>
        <message>
            <source>How much each goal counts</source>
            <translation>ہر مقصد کتنا گنا جائے</translation>
        </message>
        <message>
            <source>Kiresuk and Sherman 1968, with the goals taken to go together by 0.3. Goals that nobody has rated are left out.</source>
            <translation>‏Kiresuk اور Sherman 1968، مقاصد کا باہمی تعلق 0.3 مانا گیا۔ جن پر کسی نے رائے نہ دی وہ شامل نہیں۔</translation>
        </message>
        <message>
            <source>Nothing has been rated yet.</source>
            <translation>ابھی کسی پر رائے نہیں دی گئی۔</translation>
        </message>
        <message>
            <source>Nothing here for families</source>
            <translation>یہاں گھر والوں کے لیے کچھ نہیں</translation>
        </message>
        <message>
            <source>Numbers, for therapists</source>
            <translation>اعداد، تھراپسٹ کے لیے</translation>
        </message>
        <message>
            <source>Steps come in an order. The T-value takes them for even ones.</source>
            <translation>درجوں کی ایک ترتیب ہے۔ T قدر انہیں برابر قدم مانتا ہے۔</translation>
        </message>
        <message>
            <source>T-value of the goals that were rated, by rater</source>
            <translation>جن مقاصد پر رائے دی گئی ان کی T قدر، ہر شخص کا الگ</translation>
        </message>
        <message>
            <source>Two raters may differ by twenty and more. Read the words first. It is no grade of the child, and families do not see it.</source>
            <translation>دو لوگوں میں بیس یا زیادہ کا فرق ہو سکتا ہے۔ پہلے الفاظ پڑھیں۔ یہ بچے کا نمبر نہیں، اور گھر والے اسے نہیں دیکھتے۔</translation>
        </message>
    </context>
    <context>
        <name>GoalRatingScreen</name>
        <message>
            <source>A day earlier</source>
            <translation>ایک دن پہلے</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>ایک دن بعد</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Choose a step, and who says so</source>
            <translation>درجہ چنیں، اور کون کہتا ہے</translation>
        </message>
        <message>
            <source>How is it going?</source>
            <translation>کیسا چل رہا ہے؟</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>رکھ لیں</translation>
        </message>
        <message>
            <source>Of which day: %1</source>
            <translation>کس دن کی بات: %1</translation>
        </message>
        <message>
            <source>Said so far</source>
            <translation>اب تک کہا گیا</translation>
        </message>
        <message>
            <source>Their name</source>
            <translation>ان کا نام</translation>
        </message>
        <message>
            <source>Who says so</source>
            <translation>یہ کون کہتا ہے</translation>
        </message>
    </context>
    <context>
        <name>GoalScreen</name>
        <message>
            <source>A goal with %1</source>
            <translation>‏%1 کا مقصد</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>End this goal</source>
            <translation>یہ مقصد ختم کریں</translation>
        </message>
        <message>
            <source>How is it going?</source>
            <translation>کیسا چل رہا ہے؟</translation>
        </message>
        <message>
            <source>It had ended, and goes on</source>
            <translation>یہ ختم ہو چکا تھا، اور پھر جاری ہے</translation>
        </message>
        <message>
            <source>Other words</source>
            <translation>دوسرے الفاظ</translation>
        </message>
        <message>
            <source>Take this goal up again</source>
            <translation>یہ مقصد دوبارہ لیں</translation>
        </message>
        <message>
            <source>This goal has ended</source>
            <translation>یہ مقصد ختم ہو چکا ہے</translation>
        </message>
    </context>
    <context>
        <name>GoalWritingScreen</name>
        <message>
            <source>A goal with %1</source>
            <translation>‏%1 کا مقصد</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Five steps: what somebody could see on the day of the review</source>
            <translation>پانچ درجے: دوبارہ دیکھنے کے دن کوئی کیا دیکھ سکے گا</translation>
        </message>
        <message>
            <source>Look at what stands under a step; it keeps nothing from being agreed on. Agreed words stay as they are.</source>
            <translation>دیکھیں درجے کے نیچے کیا لکھا ہے؛ اس سے طے ہونا نہیں رکتا۔ طے شدہ الفاظ ویسے ہی رہتے ہیں۔</translation>
        </message>
        <message>
            <source>Look it over</source>
            <translation>نظر ڈال لیں</translation>
        </message>
        <message>
            <source>Opens his lunch tub at school</source>
            <translation>اسکول میں اپنا کھانے کا ڈبہ کھولتا ہے</translation>
        </message>
        <message>
            <source>Other words for a goal</source>
            <translation>مقصد کے دوسرے الفاظ</translation>
        </message>
        <message>
            <source>Read it aloud together. Agreed words stay as they are.</source>
            <translation>مل کر بلند آواز سے پڑھیں۔ طے شدہ الفاظ ویسے ہی رہتے ہیں۔</translation>
        </message>
        <message>
            <source>Say who does what, and where. From one step to the next, let one thing change.</source>
            <translation>لکھیں کون کیا کرتا ہے اور کہاں۔ ایک درجے سے اگلے تک ایک ہی بات بدلے۔</translation>
        </message>
        <message>
            <source>The same after “For …” (may be left out)</source>
            <translation>یہی بات ”… کے لیے“ سے پہلے (چھوڑ سکتے ہیں)</translation>
        </message>
        <message>
            <source>The words so far stay, with all that was said of them. A new version begins today.</source>
            <translation>اب تک کے الفاظ رہیں گے، اور ان پر جو کچھ کہا گیا وہ بھی۔ آج سے نیا روپ شروع ہوتا ہے۔</translation>
        </message>
        <message>
            <source>We agree on these words</source>
            <translation>ہم ان الفاظ پر متفق ہیں</translation>
        </message>
        <message>
            <source>What the child will do, in the family's words</source>
            <translation>بچہ کیا کرے گا، گھر والوں کے الفاظ میں</translation>
        </message>
        <message>
            <source>Why other words? (may be left out)</source>
            <translation>الفاظ کیوں بدلے؟ (چھوڑ سکتے ہیں)</translation>
        </message>
        <message>
            <source>opening his lunch tub</source>
            <translation>کھانے کا ڈبہ کھولنے</translation>
        </message>
    </context>
    <context>
        <name>GoalsScreen</name>
        <message>
            <source>Agree on a goal</source>
            <translation>مقصد طے کریں</translation>
        </message>
        <message>
            <source>Agree on one with the family, in their words: something the child does on an everyday day.</source>
            <translation>گھر والوں کے ساتھ ان کے الفاظ میں ایک طے کریں: کوئی کام جو بچہ عام دن میں کرے۔</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Earlier goals</source>
            <translation>پہلے کے مقاصد</translation>
        </message>
        <message>
            <source>Goals with %1</source>
            <translation>‏%1 کے مقاصد</translation>
        </message>
        <message>
            <source>No goal yet</source>
            <translation>ابھی کوئی مقصد نہیں</translation>
        </message>
        <message>
            <source>Numbers, for therapists</source>
            <translation>اعداد، تھراپسٹ کے لیے</translation>
        </message>
    </context>
    <context>
        <name>GrownUpScreen</name>
        <message>
            <source>%1 needs a grown-up</source>
            <translation>‏%1 کو کسی بڑے کی ضرورت ہے</translation>
        </message>
        <message>
            <source>An open hand</source>
            <translation>ایک کھلا ہاتھ</translation>
        </message>
        <message>
            <source>Hurt, toilet, thirsty, hungry, scared, or no? Play can wait.</source>
            <translation>درد، ٹوائلٹ، پیاس، بھوک، ڈر، یا نہیں؟ کھیل رک سکتا ہے۔</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>بڑے: دبائے رکھیں</translation>
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
            <translation>فائل میں ساتھیوں کا سب مشترک ہے، مہر بند۔ اسے اسٹک پر کسی ساتھی کو دیں، یا فون سے فون پر بھیجیں۔</translation>
        </message>
        <message>
            <source>A file that somebody has given you</source>
            <translation>وہ فائل جو کسی نے آپ کو دی</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Hand over a file</source>
            <translation>فائل دیں</translation>
        </message>
        <message>
            <source>Make a file</source>
            <translation>فائل بنائیں</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>ایک لمحہ۔</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>کھولیں</translation>
        </message>
        <message>
            <source>Where it lies first.</source>
            <translation>پہلے بتائیں کہاں ہے۔</translation>
        </message>
        <message>
            <source>Where it lies on this phone</source>
            <translation>اس فون پر کہاں ہے</translation>
        </message>
    </context>
    <context>
        <name>HaveReadyRow</name>
        <message>
            <source>Here</source>
            <translation>یہاں ہے</translation>
        </message>
        <message>
            <source>Not here</source>
            <translation>یہاں نہیں</translation>
        </message>
    </context>
    <context>
        <name>HaveReadyScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Have ready</source>
            <translation>تیار رکھیں</translation>
        </message>
        <message>
            <source>No video session is planned.</source>
            <translation>کوئی ویڈیو ملاقات طے نہیں۔</translation>
        </message>
        <message>
            <source>Video session: %1</source>
            <translation>ویڈیو ملاقات: %1</translation>
        </message>
    </context>
    <context>
        <name>HomePage</name>
        <message>
            <source>Other children decide what may come out of the box, present or not. Are there any?</source>
            <translation>دوسرے بچوں سے طے ہوتا ہے کہ ڈبے سے کیا نکل سکتا ہے، وہ موجود ہوں یا نہ ہوں۔ کیا کوئی ہے؟</translation>
        </message>
        <message>
            <source>What are you called here?</source>
            <translation>یہاں آپ کو کیا کہتے ہیں؟</translation>
        </message>
    </context>
    <context>
        <name>HomeSheetScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Emergency number</source>
            <translation>ہنگامی نمبر</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>گھر کا پرچہ</translation>
        </message>
        <message>
            <source>No</source>
            <translation>نہیں</translation>
        </message>
        <message>
            <source>No: %1</source>
            <translation>نہیں: %1</translation>
        </message>
        <message>
            <source>Numbers to call</source>
            <translation>فون کرنے کے نمبر</translation>
        </message>
        <message>
            <source>Poison line</source>
            <translation>زہر کی ہیلپ لائن</translation>
        </message>
        <message>
            <source>Say who lives here</source>
            <translation>بتائیں یہاں کون رہتا ہے</translation>
        </message>
        <message>
            <source>They stand on top when something is wrong. Only you know which ones hold where you live.</source>
            <translation>کچھ ٹھیک نہ ہو تو یہ سب سے اوپر ہوتے ہیں۔ صرف آپ جانتے ہیں کہ آپ کی جگہ کون سے چلتے ہیں۔</translation>
        </message>
        <message>
            <source>Until then only the safest things are offered.</source>
            <translation>تب تک صرف سب سے محفوظ چیزیں پیش ہوتی ہیں۔</translation>
        </message>
        <message>
            <source>What must leave the house</source>
            <translation>گھر سے کیا نکالنا لازم ہے</translation>
        </message>
        <message>
            <source>Who lives here</source>
            <translation>یہاں کون رہتا ہے</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>ہاں</translation>
        </message>
        <message>
            <source>Yes: %1</source>
            <translation>ہاں: %1</translation>
        </message>
    </context>
    <context>
        <name>InviteLine</name>
        <message>
            <source>Read it aloud</source>
            <translation>پڑھ کر سنائیں</translation>
        </message>
        <message>
            <source>To begin, say</source>
            <translation>شروع کرنے کو کہیں</translation>
        </message>
    </context>
    <context>
        <name>ItemChanges</name>
        <message>
            <source>%1 back in the box</source>
            <translation>‏%1 واپس ڈبے میں</translation>
        </message>
        <message>
            <source>Choose a word first</source>
            <translation>پہلے ایک لفظ چنیں</translation>
        </message>
        <message>
            <source>How many?</source>
            <translation>کتنے؟</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>لکھ لیں</translation>
        </message>
        <message>
            <source>Something is gone</source>
            <translation>کچھ کم ہو گیا</translation>
        </message>
        <message>
            <source>Still in use: how many are back in the box?</source>
            <translation>ابھی استعمال میں: کتنے واپس ڈبے میں ہیں؟</translation>
        </message>
        <message>
            <source>What became of it?</source>
            <translation>اس کا کیا ہوا؟</translation>
        </message>
        <message>
            <source>today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>گزشتہ کل</translation>
        </message>
    </context>
    <context>
        <name>ItemHygiene</name>
        <message>
            <source>Replaced</source>
            <translation>بدل دیا</translation>
        </message>
        <message>
            <source>Thrown away</source>
            <translation>پھینک دیا</translation>
        </message>
        <message>
            <source>Washed</source>
            <translation>دھو لیا</translation>
        </message>
    </context>
    <context>
        <name>ItemLook</name>
        <message>
            <source>It has dried out</source>
            <translation>یہ سوکھ گیا ہے</translation>
        </message>
        <message>
            <source>It is good</source>
            <translation>یہ ٹھیک ہے</translation>
        </message>
        <message>
            <source>Thrown away</source>
            <translation>پھینک دیا</translation>
        </message>
        <message>
            <source>Time for a look</source>
            <translation>دیکھنے کا وقت</translation>
        </message>
    </context>
    <context>
        <name>ItemPieces</name>
        <message>
            <source>How long do you keep it once opened?</source>
            <translation>کھلنے کے بعد آپ اسے کب تک رکھتے ہیں؟</translation>
        </message>
        <message>
            <source>It was left open</source>
            <translation>یہ کھلا رہ گیا تھا</translation>
        </message>
        <message>
            <source>Keeps: %1</source>
            <translation>چلتا ہے: %1</translation>
        </message>
        <message>
            <source>Opened: %1</source>
            <translation>کھولا گیا: %1</translation>
        </message>
        <message>
            <source>When was it opened?</source>
            <translation>یہ کب کھولا گیا؟</translation>
        </message>
    </context>
    <context>
        <name>ItemScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>دیکھ بھال</translation>
        </message>
        <message>
            <source>It was in a mouth</source>
            <translation>یہ منہ میں گیا تھا</translation>
        </message>
    </context>
    <context>
        <name>ItemUse</name>
        <message>
            <source>How long it lasts</source>
            <translation>کتنا چلتا ہے</translation>
        </message>
        <message>
            <source>Pieces gone, week by week</source>
            <translation>کم ہوئے ٹکڑے، ہفتہ بہ ہفتہ</translation>
        </message>
    </context>
    <context>
        <name>ItemWords</name>
        <message>
            <source>%1 out</source>
            <translation>‏%1 باہر</translation>
        </message>
        <message numerus="yes">
            <source>%n still in use.</source>
            <translation>
                <numerusform>‏%n ابھی استعمال میں۔</numerusform>
                <numerusform>‏%n ابھی استعمال میں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>مانگا گیا</translation>
        </message>
        <message>
            <source>count it</source>
            <translation>گنیں</translation>
        </message>
        <message>
            <source>look at it</source>
            <translation>دیکھیں</translation>
        </message>
        <message>
            <source>low</source>
            <translation>کم ہو رہا ہے</translation>
        </message>
        <message>
            <source>none</source>
            <translation>کوئی نہیں</translation>
        </message>
        <message>
            <source>on its way</source>
            <translation>راستے میں</translation>
        </message>
        <message>
            <source>throw away</source>
            <translation>پھینک دیں</translation>
        </message>
        <message>
            <source>use soon</source>
            <translation>جلد استعمال کریں</translation>
        </message>
        <message>
            <source>wash it</source>
            <translation>دھوئیں</translation>
        </message>
        <message>
            <source>which?</source>
            <translation>کون سا؟</translation>
        </message>
    </context>
    <context>
        <name>JoinScreen</name>
        <message>
            <source>Begin</source>
            <translation>شروع</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>آگے</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>میرے پاس کوڈ ہے</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>ایک لمحہ۔</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>ایک صفحہ پیچھے</translation>
        </message>
        <message>
            <source>Read the squares</source>
            <translation>خانے پڑھیں</translation>
        </message>
        <message>
            <source>The nine words first.</source>
            <translation>پہلے نو لفظ۔</translation>
        </message>
        <message>
            <source>The place first.</source>
            <translation>پہلے جگہ۔</translation>
        </message>
        <message>
            <source>Use words instead</source>
            <translation>اس کی جگہ لفظ لکھیں</translation>
        </message>
        <message>
            <source>Waiting to be let in</source>
            <translation>اندر آنے کا انتظار</translation>
        </message>
        <message>
            <source>What you may see has come to this phone. What you note goes to the crew.</source>
            <translation>جو آپ دیکھ سکتے ہیں وہ اس فون پر آ گیا۔ آپ کا لکھا ساتھیوں کو جاتا ہے۔</translation>
        </message>
        <message>
            <source>Where do the phones meet?</source>
            <translation>فون کہاں ملتے ہیں؟</translation>
        </message>
        <message>
            <source>Who are you?</source>
            <translation>آپ کون ہیں؟</translation>
        </message>
        <message>
            <source>You are in</source>
            <translation>آپ اندر ہیں</translation>
        </message>
    </context>
    <context>
        <name>JustNotedSlip</name>
        <message>
            <source>Noted</source>
            <translation>لکھ لیا گیا</translation>
        </message>
        <message>
            <source>Put it in again</source>
            <translation>پھر لکھ لیں</translation>
        </message>
        <message>
            <source>Put it in again: %1</source>
            <translation>پھر لکھ لیں: %1</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>لکھا واپس لیں</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>لکھا واپس لیں: %1</translation>
        </message>
        <message>
            <source>Taken back</source>
            <translation>لکھا واپس لیا گیا</translation>
        </message>
        <message>
            <source>Taken back: %1</source>
            <translation>لکھا واپس لیا گیا: %1</translation>
        </message>
    </context>
    <context>
        <name>KiteBreathsScreen</name>
        <message>
            <source>Four kite breaths</source>
            <translation>پتنگ کے چار سانس</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>آگے</translation>
        </message>
        <message>
            <source>In: string out</source>
            <translation>سانس اندر: ڈور باہر</translation>
        </message>
        <message>
            <source>Look at the kite</source>
            <translation>پتنگ کو دیکھیں</translation>
        </message>
        <message>
            <source>Out: string in</source>
            <translation>سانس باہر: ڈور اندر</translation>
        </message>
        <message>
            <source>Stop here</source>
            <translation>یہاں رکیں</translation>
        </message>
        <message>
            <source>That was four. Stay near.</source>
            <translation>یہ چار ہوئے۔ پاس رہیں۔</translation>
        </message>
        <message>
            <source>The string is in.</source>
            <translation>ڈور اندر ہے۔</translation>
        </message>
        <message>
            <source>You breathe. Your child may.</source>
            <translation>سانس آپ لیں۔ بچہ بھی لے سکتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>KiteCard</name>
        <message>
            <source>A toddler at home? No loose pieces.</source>
            <translation>گھر میں ننھا بچہ ہے؟ کوئی الگ ٹکڑا نہ ہو۔</translation>
        </message>
        <message>
            <source>Clip a clothes peg on the picture. It stays while you play.</source>
            <translation>تصویر پر کپڑوں کا کلپ لگائیں۔ کھیلتے وقت وہ لگا رہے۔</translation>
        </message>
        <message>
            <source>For you, before you play</source>
            <translation>آپ کے لیے، کھیل سے پہلے</translation>
        </message>
        <message>
            <source>Laminated? Cut the sharp corners round.</source>
            <translation>پلاسٹک چڑھایا؟ تیز کونے گول کاٹیں۔</translation>
        </message>
        <message>
            <source>Tape the two sides together at the top, and they stand.</source>
            <translation>دونوں طرفیں اوپر سے ٹیپ کریں، تو کارڈ کھڑا رہتا ہے۔</translation>
        </message>
        <message>
            <source>What we call it at home</source>
            <translation>ہم اسے گھر میں کیا کہتے ہیں</translation>
        </message>
    </context>
    <context>
        <name>KiteCorner</name>
        <message>
            <source>Show the kite</source>
            <translation>پتنگ دکھائیں</translation>
        </message>
    </context>
    <context>
        <name>KiteHead</name>
        <message>
            <source>Kite: not asked</source>
            <translation>پتنگ: نہیں پوچھا</translation>
        </message>
        <message>
            <source>Kite: not asked today</source>
            <translation>پتنگ: آج نہیں پوچھا</translation>
        </message>
        <message>
            <source>One tap, or play without</source>
            <translation>ایک بار چھوئیں، یا اس کے بغیر کھیلیں</translation>
        </message>
        <message>
            <source>Your own guess: %1</source>
            <translation>آپ کا اپنا اندازہ: %1</translation>
        </message>
    </context>
    <context>
        <name>KiteLines</name>
        <message>
            <source>Kite off</source>
            <translation>پتنگ بند</translation>
        </message>
        <message>
            <source>My own guess</source>
            <translation>میرا اپنا اندازہ</translation>
        </message>
        <message>
            <source>Often suits. You know best what it did.</source>
            <translation>اکثر مناسب رہتا ہے۔ اس نے کیا کیا، یہ آپ بہتر جانتے ہیں۔</translation>
        </message>
        <message>
            <source>Show the kite</source>
            <translation>پتنگ دکھائیں</translation>
        </message>
        <message>
            <source>That wasn't me</source>
            <translation>یہ میری نہیں</translation>
        </message>
    </context>
    <context>
        <name>KiteScreen</name>
        <message>
            <source>Grown-up</source>
            <translation>بڑے</translation>
        </message>
        <message>
            <source>I need a grown-up</source>
            <translation>مجھے کوئی بڑا چاہیے</translation>
        </message>
        <message>
            <source>I need a grown‑up</source>
            <translation>مجھے کوئی بڑا چاہیے</translation>
        </message>
        <message>
            <source>Read aloud</source>
            <translation>پڑھ کر سنائیں</translation>
        </message>
        <message>
            <source>Steady</source>
            <translation>سیدھی</translation>
        </message>
        <message>
            <source>Whirling</source>
            <translation>گھومتی</translation>
        </message>
        <message>
            <source>Your guess: what is the kite doing?</source>
            <translation>آپ کا اندازہ: پتنگ کیا کر رہی ہے؟</translation>
        </message>
        <message>
            <source>adult: hold</source>
            <translation>بڑے: دبائے رکھیں</translation>
        </message>
        <message>
            <source>hold</source>
            <translation>دبائے رکھیں</translation>
        </message>
    </context>
    <context>
        <name>KiteSettings</name>
        <message>
            <source>%1 s</source>
            <translation>‏%1 سیکنڈ</translation>
        </message>
        <message>
            <source>A card to print, for a clothes peg. Saved among your documents.</source>
            <translation>چھاپنے کا کارڈ، کپڑوں کے کلپ کے لیے۔ آپ کی دستاویزات میں محفوظ ہوتا ہے۔</translation>
        </message>
        <message>
            <source>How long a touch must last</source>
            <translation>چھونا کتنی دیر کا ہو</translation>
        </message>
        <message>
            <source>Longer touch</source>
            <translation>لمبا چھونا</translation>
        </message>
        <message>
            <source>Say the kite's words aloud</source>
            <translation>پتنگ کے لفظ بول کر سنائیں</translation>
        </message>
        <message>
            <source>Shorter ones do not count on the kite's screen.</source>
            <translation>اس سے چھوٹے پتنگ کی اسکرین پر نہیں گنے جاتے۔</translation>
        </message>
        <message>
            <source>Shorter touch</source>
            <translation>چھوٹا چھونا</translation>
        </message>
        <message>
            <source>The kite on paper</source>
            <translation>کاغذ پر پتنگ</translation>
        </message>
        <message>
            <source>The question and the thanks. A long touch on a picture says what it is.</source>
            <translation>سوال اور شکریہ۔ تصویر کو دیر تک چھونے سے پتا چلتا ہے کہ وہ کیا ہے۔</translation>
        </message>
        <message>
            <source>any</source>
            <translation>کوئی بھی</translation>
        </message>
    </context>
    <context>
        <name>LearnKey</name>
        <message>
            <source>Press that switch now.</source>
            <translation>وہ سوئچ ابھی دبائیں۔</translation>
        </message>
        <message>
            <source>Tab or Right</source>
            <translation>‏Tab یا دایاں تیر</translation>
        </message>
        <message>
            <source>The key that moves the ring on</source>
            <translation>گھیرا آگے بڑھانے والا بٹن</translation>
        </message>
    </context>
    <context>
        <name>LetInScreen</name>
        <message>
            <source>%1 is in</source>
            <translation>‏%1 اندر آ گئے</translation>
        </message>
        <message>
            <source>%1 is in. What they may see is on its way to that phone.</source>
            <translation>‏%1 اندر آ گئے۔ جو وہ دیکھ سکتے ہیں وہ اس فون کی طرف جا رہا ہے۔</translation>
        </message>
        <message>
            <source>A new code</source>
            <translation>نیا کوڈ</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Choose a shared place</source>
            <translation>مشترک جگہ چنیں</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>First the phones need a place where they leave what they share, and your yes to it.</source>
            <translation>پہلے فونوں کو ایک جگہ چاہیے جہاں مشترک چیزیں رکھیں، اور آپ کی ہاں۔</translation>
        </message>
        <message>
            <source>Let somebody in</source>
            <translation>کسی کو اندر آنے دیں</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>کوڈ بنائیں</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>ایک لمحہ۔</translation>
        </message>
        <message>
            <source>Somebody is here: %1</source>
            <translation>کوئی آیا ہے: %1</translation>
        </message>
        <message>
            <source>The code has ended</source>
            <translation>کوڈ ختم ہو گیا</translation>
        </message>
        <message>
            <source>The code has ended, and nobody came in by it. A new one takes one tap.</source>
            <translation>کوڈ ختم ہو گیا، اور اس سے کوئی اندر نہیں آیا۔ نیا ایک بار چھونے سے بنتا ہے۔</translation>
        </message>
        <message>
            <source>Whom first.</source>
            <translation>پہلے چنیں کسے۔</translation>
        </message>
    </context>
    <context>
        <name>LetterBoard</name>
        <message>
            <source>A gap</source>
            <translation>خالی جگہ</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Nothing written</source>
            <translation>کچھ نہیں لکھا</translation>
        </message>
        <message>
            <source>One letter back</source>
            <translation>ایک حرف پیچھے</translation>
        </message>
        <message>
            <source>abcdefghijklmnopqrstuvwxyz</source>
            <translation>اآبپتٹثجچحخدڈذرڑزژسشصضطظعغفقکگلمنںوؤہھءئیے</translation>
        </message>
    </context>
    <context>
        <name>LevelField</name>
        <message>
            <source>As it is today</source>
            <translation>آج ایسا ہے</translation>
        </message>
        <message>
            <source>As it is today: %1</source>
            <translation>آج ایسا ہے: %1</translation>
        </message>
    </context>
    <context>
        <name>LidListPage</name>
        <message>
            <source>Compare with the list inside your lid. Change what differs.</source>
            <translation>اپنے ڈھکن کے اندر کی فہرست سے ملائیں۔ جو مختلف ہو وہ بدلیں۔</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک اور: %1</translation>
        </message>
    </context>
    <context>
        <name>LifeWords</name>
        <message>
            <source>Away from home</source>
            <translation>گھر سے باہر</translation>
        </message>
        <message>
            <source>No mess</source>
            <translation>گندگی نہیں</translation>
        </message>
        <message>
            <source>No table</source>
            <translation>میز نہیں</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>ایک ہاتھ</translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>خاموش</translation>
        </message>
        <message>
            <source>Someone is ill</source>
            <translation>کوئی بیمار ہے</translation>
        </message>
        <message>
            <source>Tired</source>
            <translation>تھکن</translation>
        </message>
    </context>
    <context>
        <name>LinkRow</name>
        <message>
            <source>%1, shown</source>
            <translation>‏%1، کھلا ہے</translation>
        </message>
        <message>
            <source>shown</source>
            <translation>کھلا ہے</translation>
        </message>
    </context>
    <context>
        <name>LookFirst</name>
        <message>
            <source>All good</source>
            <translation>سب ٹھیک</translation>
        </message>
        <message>
            <source>Look first</source>
            <translation>پہلے دیکھیں</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Lidlark</source>
            <translation>‏Lidlark</translation>
        </message>
    </context>
    <context>
        <name>MainTabs</name>
        <message>
            <source>Box</source>
            <translation>ڈبا</translation>
        </message>
        <message>
            <source>Crew</source>
            <translation>ساتھی</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>کاپی</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>جگہیں</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>Workbench</source>
            <translation>کام کی میز</translation>
        </message>
    </context>
    <context>
        <name>Member</name>
        <message>
            <source>%1, this phone</source>
            <translation>‏%1، یہ فون</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>‏%1، %2 تک</translation>
        </message>
        <message>
            <source>Leave the crew</source>
            <translation>ساتھیوں سے نکلیں</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>نکالیں</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>نکالیں: %1</translation>
        </message>
    </context>
    <context>
        <name>Members</name>
        <message>
            <source>In the crew</source>
            <translation>ساتھیوں میں</translation>
        </message>
    </context>
    <context>
        <name>MonthChips</name>
        <message>
            <source>April</source>
            <translation>اپریل</translation>
        </message>
        <message>
            <source>August</source>
            <translation>اگست</translation>
        </message>
        <message>
            <source>Birthday in</source>
            <translation>سالگرہ کا مہینہ</translation>
        </message>
        <message>
            <source>December</source>
            <translation>دسمبر</translation>
        </message>
        <message>
            <source>February</source>
            <translation>فروری</translation>
        </message>
        <message>
            <source>January</source>
            <translation>جنوری</translation>
        </message>
        <message>
            <source>July</source>
            <translation>جولائی</translation>
        </message>
        <message>
            <source>June</source>
            <translation>جون</translation>
        </message>
        <message>
            <source>March</source>
            <translation>مارچ</translation>
        </message>
        <message>
            <source>May</source>
            <translation>مئی</translation>
        </message>
        <message>
            <source>November</source>
            <translation>نومبر</translation>
        </message>
        <message>
            <source>October</source>
            <translation>اکتوبر</translation>
        </message>
        <message>
            <source>September</source>
            <translation>ستمبر</translation>
        </message>
    </context>
    <context>
        <name>MoreBoxes</name>
        <message>
            <source>A box for %1</source>
            <translation>‏%1 کے لیے ڈبہ</translation>
        </message>
        <message>
            <source>A box for a child. What the home must avoid is filled in.</source>
            <translation>بچے کے لیے ڈبہ۔ گھر کو جس چیز سے بچنا ہے وہ خود درج ہو جاتی ہے۔</translation>
        </message>
        <message>
            <source>A box for each of them</source>
            <translation>ان میں سے ہر ایک کے لیے ڈبہ</translation>
        </message>
        <message>
            <source>Add to this build</source>
            <translation>اس مجموعے میں شامل کریں</translation>
        </message>
        <message>
            <source>All of them</source>
            <translation>سب</translation>
        </message>
        <message>
            <source>Boxes that are nobody's yet</source>
            <translation>ڈبے جو ابھی کسی کے نہیں</translation>
        </message>
        <message>
            <source>More boxes</source>
            <translation>اور ڈبے</translation>
        </message>
        <message>
            <source>Not after all</source>
            <translation>رہنے دیں</translation>
        </message>
        <message>
            <source>One box less</source>
            <translation>ایک ڈبہ کم</translation>
        </message>
        <message>
            <source>One box more</source>
            <translation>ایک ڈبہ زیادہ</translation>
        </message>
        <message>
            <source>Say first what belongs in a box</source>
            <translation>پہلے بتائیں ڈبے میں کیا ہوتا ہے</translation>
        </message>
        <message>
            <source>What would they cost?</source>
            <translation>ان پر کتنا خرچ ہوگا؟</translation>
        </message>
    </context>
    <context>
        <name>NotebookScreen</name>
        <message>
            <source>All about the goals</source>
            <translation>مقاصد کی پوری بات</translation>
        </message>
        <message>
            <source>Earlier goals</source>
            <translation>پہلے کے مقاصد</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>اگلا</translation>
        </message>
        <message>
            <source>Notebook</source>
            <translation>کاپی</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>آج لکھا گیا</translation>
        </message>
        <message>
            <source>Notes of your own</source>
            <translation>اپنے نوٹ</translation>
        </message>
        <message>
            <source>Nothing here yet</source>
            <translation>ابھی یہاں کچھ نہیں</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>اب</translation>
        </message>
        <message>
            <source>The kite before and after</source>
            <translation>پتنگ، پہلے اور بعد میں</translation>
        </message>
        <message>
            <source>What you play together is written down here by itself.</source>
            <translation>آپ مل کر جو کھیلتے ہیں وہ یہاں خود لکھا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Working towards</source>
            <translation>اس وقت کا مقصد</translation>
        </message>
    </context>
    <context>
        <name>NotedRow</name>
        <message>
            <source>Put it in again</source>
            <translation>پھر لکھ لیں</translation>
        </message>
        <message>
            <source>Put it in again: %1</source>
            <translation>پھر لکھ لیں: %1</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>لکھا واپس لیں</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>لکھا واپس لیں: %1</translation>
        </message>
        <message>
            <source>Taken back</source>
            <translation>لکھا واپس لیا گیا</translation>
        </message>
    </context>
    <context>
        <name>NotedTodayScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Noted today</source>
            <translation>آج لکھا گیا</translation>
        </message>
        <message>
            <source>Nothing noted today</source>
            <translation>آج کچھ نہیں لکھا گیا</translation>
        </message>
        <message>
            <source>Until the day is over, each of you can take back what you noted.</source>
            <translation>دن ختم ہونے تک آپ میں سے ہر ایک اپنا لکھا واپس لے سکتا ہے۔</translation>
        </message>
        <message>
            <source>What is noted stands here until the day is over. Until then it can be taken back.</source>
            <translation>جو لکھا جائے وہ دن ختم ہونے تک یہاں رہتا ہے۔ تب تک اسے واپس لیا جا سکتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>NoticedScreen</name>
        <message>
            <source>Asked for it again</source>
            <translation>پھر مانگا</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>For %1 to show, once, or not at all.</source>
            <translation>‏%1 دکھائے، ایک بار، یا بالکل نہیں۔</translation>
        </message>
        <message>
            <source>Found own way</source>
            <translation>اپنا طریقہ نکالا</translation>
        </message>
        <message>
            <source>Needed help</source>
            <translation>مدد چاہیے تھی</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>واپس رکھ دیا</translation>
        </message>
        <message>
            <source>What did you notice? Only if you like.</source>
            <translation>آپ نے کیا دیکھا؟ صرف جی چاہے تو۔</translation>
        </message>
        <message>
            <source>What is the kite doing now?</source>
            <translation>پتنگ اب کیا کر رہی ہے؟</translation>
        </message>
    </context>
    <context>
        <name>NumberEntry</name>
        <message>
            <source>Keep this number</source>
            <translation>یہ نمبر رکھیں</translation>
        </message>
        <message>
            <source>Keep this number: %1</source>
            <translation>یہ نمبر رکھیں: %1</translation>
        </message>
    </context>
    <context>
        <name>OnTheShelf</name>
        <message>
            <source>A note to yourself</source>
            <translation>اپنے لیے ایک نوٹ</translation>
        </message>
        <message>
            <source>Box with lid</source>
            <translation>ڈھکن والا ڈبہ</translation>
        </message>
        <message>
            <source>Lot, as it is printed</source>
            <translation>لاٹ، جیسا چھپا ہے</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>نام</translation>
        </message>
        <message>
            <source>On the shelf, pieces</source>
            <translation>شیلف پر، ٹکڑے</translation>
        </message>
        <message>
            <source>The catalogue does not know it. What did you look for, and find none of?</source>
            <translation>کیٹلاگ اسے نہیں جانتا۔ آپ نے اس میں کیا ڈھونڈا اور نہیں پایا؟</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>کھیل میں ختم ہو جاتا ہے</translation>
        </message>
    </context>
    <context>
        <name>OtherChildForm</name>
        <message>
            <source>Add %1</source>
            <translation>‏%1 کو شامل کریں</translation>
        </message>
        <message>
            <source>Another child: first name or a letter</source>
            <translation>ایک اور بچہ: پہلا نام یا ایک حرف</translation>
        </message>
        <message>
            <source>Don't know</source>
            <translation>پتا نہیں</translation>
        </message>
        <message>
            <source>How many years old?</source>
            <translation>عمر کتنی ہے؟</translation>
        </message>
        <message>
            <source>No longer</source>
            <translation>اب نہیں</translation>
        </message>
        <message>
            <source>Still puts things in the mouth?</source>
            <translation>کیا اب بھی چیزیں منہ میں جاتی ہیں؟</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>ہاں</translation>
        </message>
    </context>
    <context>
        <name>OtherChildRow</name>
        <message>
            <source>Take off: %1</source>
            <translation>ہٹائیں: %1</translation>
        </message>
    </context>
    <context>
        <name>OurWayLine</name>
        <message>
            <source>Change it</source>
            <translation>بدلیں</translation>
        </message>
        <message>
            <source>It stays on this home's phones. The cautions above hold all the same.</source>
            <translation>یہ اس گھر کے فونوں پر رہتا ہے۔ اوپر کی احتیاطیں پھر بھی لازم ہیں۔</translation>
        </message>
        <message>
            <source>Keep our way</source>
            <translation>ہمارا طریقہ رکھیں</translation>
        </message>
        <message>
            <source>Leave it as it was</source>
            <translation>جیسا تھا رہنے دیں</translation>
        </message>
        <message>
            <source>Our way</source>
            <translation>ہمارا طریقہ</translation>
        </message>
        <message>
            <source>Our way, in one line</source>
            <translation>ہمارا طریقہ، ایک سطر میں</translation>
        </message>
        <message>
            <source>Take it off</source>
            <translation>ہٹائیں</translation>
        </message>
        <message>
            <source>Write down your own way</source>
            <translation>اپنا طریقہ لکھیں</translation>
        </message>
    </context>
    <context>
        <name>OwnActivitiesScreen</name>
        <message>
            <source>Activities of your own</source>
            <translation>آپ کی اپنی سرگرمیاں</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Begin with one of ours</source>
            <translation>ہماری کسی سرگرمی سے شروع کریں</translation>
        </message>
        <message>
            <source>Begin with the words of %1</source>
            <translation>‏%1 کے الفاظ سے شروع کریں</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>فہرست بند کریں</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>نام سے ڈھونڈیں</translation>
        </message>
        <message>
            <source>Nothing of your own yet</source>
            <translation>ابھی اپنا کچھ نہیں</translation>
        </message>
        <message>
            <source>Write a new one</source>
            <translation>نئی لکھیں</translation>
        </message>
        <message>
            <source>Write what you play with one child, in the same parts as ours. It goes through the same checks, and then to the boxes you choose.</source>
            <translation>جو آپ ایک بچے کے ساتھ کھیلتے ہیں اسے ہماری سرگرمیوں ہی کے حصوں میں لکھیں۔ اس کی وہی جانچ ہوتی ہے، پھر یہ آپ کے چنے ہوئے ڈبوں میں جاتی ہے۔</translation>
        </message>
    </context>
    <context>
        <name>OwnActivityScreen</name>
        <message>
            <source>A draft. It is kept as you write, and nobody else sees it.</source>
            <translation>مسودہ۔ لکھتے لکھتے محفوظ ہوتا ہے، اور کوئی اور اسے نہیں دیکھتا۔</translation>
        </message>
        <message>
            <source>Add a step</source>
            <translation>مرحلہ بڑھائیں</translation>
        </message>
        <message>
            <source>An activity of your own</source>
            <translation>آپ کی اپنی سرگرمی</translation>
        </message>
        <message>
            <source>Back; it is kept</source>
            <translation>واپس؛ سب محفوظ ہے</translation>
        </message>
        <message>
            <source>Choose whose box it is for</source>
            <translation>چنیں کہ کس کے ڈبے کے لیے ہے</translation>
        </message>
        <message>
            <source>Easier and harder</source>
            <translation>آسان اور مشکل</translation>
        </message>
        <message>
            <source>How and where</source>
            <translation>کیسے اور کہاں</translation>
        </message>
        <message>
            <source>Make it ready for boxes</source>
            <translation>ڈبوں کے لیے تیار کریں</translation>
        </message>
        <message>
            <source>Minutes, age, and how close you are</source>
            <translation>منٹ، عمر، اور آپ کتنے قریب ہیں</translation>
        </message>
        <message>
            <source>Name and first words</source>
            <translation>نام اور پہلے الفاظ</translation>
        </message>
        <message>
            <source>Ready for boxes. Change a word, and it is a draft again; the boxes keep what they have.</source>
            <translation>ڈبوں کے لیے تیار۔ کوئی لفظ بدلیں تو یہ پھر مسودہ ہے؛ ڈبوں میں جو ہے وہی رہتا ہے۔</translation>
        </message>
        <message>
            <source>Send to the chosen boxes</source>
            <translation>چنے ہوئے ڈبوں میں بھیجیں</translation>
        </message>
        <message numerus="yes">
            <source>Something is still to do in %n parts</source>
            <translation>
                <numerusform>ابھی %n حصے میں کچھ باقی ہے</numerusform>
                <numerusform>ابھی %n حصوں میں کچھ باقی ہے</numerusform>
            </translation>
        </message>
        <message>
            <source>Step %1</source>
            <translation>مرحلہ %1</translation>
        </message>
        <message>
            <source>The steps</source>
            <translation>مرحلے</translation>
        </message>
        <message>
            <source>What it is for</source>
            <translation>یہ کس لیے ہے</translation>
        </message>
        <message>
            <source>What it is played with</source>
            <translation>کن چیزوں سے کھیلتے ہیں</translation>
        </message>
        <message>
            <source>What to mind</source>
            <translation>کس بات کا خیال رکھیں</translation>
        </message>
        <message>
            <source>What to say, and putting back</source>
            <translation>کیا کہیں، اور واپس رکھنا</translation>
        </message>
    </context>
    <context>
        <name>OwnBoxes</name>
        <message>
            <source>Take it back</source>
            <translation>واپس لیں</translation>
        </message>
        <message>
            <source>Take it back from %1's box</source>
            <translation>‏%1 کے ڈبے سے واپس لیں</translation>
        </message>
        <message>
            <source>Whose box is it for?</source>
            <translation>یہ کس کے ڈبے کے لیے ہے؟</translation>
        </message>
    </context>
    <context>
        <name>OwnCautionsPart</name>
        <message>
            <source>Add what to watch for</source>
            <translation>کس پر نظر رکھیں، بڑھائیں</translation>
        </message>
        <message>
            <source>Add when to stop</source>
            <translation>کب رکیں، بڑھائیں</translation>
        </message>
        <message>
            <source>From what it is played with; these stay</source>
            <translation>کھیل کی چیزوں سے؛ یہ رہتی ہیں</translation>
        </message>
        <message>
            <source>More that the play itself brings</source>
            <translation>کھیل سے جو اور باتیں آتی ہیں</translation>
        </message>
        <message>
            <source>What to watch for, line %1</source>
            <translation>کس پر نظر رکھیں، سطر %1</translation>
        </message>
        <message>
            <source>When to stop, line %1</source>
            <translation>کب رکیں، سطر %1</translation>
        </message>
    </context>
    <context>
        <name>OwnFollows</name>
        <message>
            <source>At the earliest</source>
            <translation>کم سے کم عمر</translation>
        </message>
        <message>
            <source>What follows from its sizes</source>
            <translation>ناپ سے کیا نکلتا ہے</translation>
        </message>
        <message>
            <source>What there is to mind in all</source>
            <translation>کل کن باتوں کا خیال رکھیں</translation>
        </message>
    </context>
    <context>
        <name>OwnGradingsPart</name>
        <message>
            <source>Add a line that makes it easier</source>
            <translation>آسان کرنے والی سطر بڑھائیں</translation>
        </message>
        <message>
            <source>Add a line that makes it harder</source>
            <translation>مشکل کرنے والی سطر بڑھائیں</translation>
        </message>
        <message>
            <source>Easier, line %1</source>
            <translation>آسان، سطر %1</translation>
        </message>
        <message>
            <source>Harder, line %1</source>
            <translation>مشکل، سطر %1</translation>
        </message>
    </context>
    <context>
        <name>OwnHomePart</name>
        <message>
            <source>Add a line for putting back</source>
            <translation>واپس رکھنے کی سطر بڑھائیں</translation>
        </message>
        <message>
            <source>Add something to say</source>
            <translation>کہنے کی بات بڑھائیں</translation>
        </message>
        <message>
            <source>Last of all: lid on.</source>
            <translation>سب سے آخر میں: ڈھکن بند۔</translation>
        </message>
        <message>
            <source>Putting back, line %1</source>
            <translation>واپس رکھنا، سطر %1</translation>
        </message>
        <message>
            <source>Something to say, line %1</source>
            <translation>کہنے کی بات، سطر %1</translation>
        </message>
        <message>
            <source>Write a line for each thing</source>
            <translation>ہر چیز کی ایک سطر لکھیں</translation>
        </message>
    </context>
    <context>
        <name>OwnItemScreen</name>
        <message>
            <source>A draft. It is kept as you write, and nobody else sees it.</source>
            <translation>مسودہ۔ لکھتے لکھتے محفوظ ہوتا ہے، اور کوئی اور اسے نہیں دیکھتا۔</translation>
        </message>
        <message>
            <source>Back; it is kept</source>
            <translation>واپس؛ سب محفوظ ہے</translation>
        </message>
        <message>
            <source>Choose whose box it is for</source>
            <translation>چنیں کہ کس کے ڈبے کے لیے ہے</translation>
        </message>
        <message>
            <source>Its place in the box</source>
            <translation>ڈبے میں اس کی جگہ</translation>
        </message>
        <message>
            <source>Its sizes</source>
            <translation>اس کے ناپ</translation>
        </message>
        <message>
            <source>Keep it for boxes</source>
            <translation>ڈبوں کے لیے محفوظ کریں</translation>
        </message>
        <message>
            <source>Name and picture</source>
            <translation>نام اور تصویر</translation>
        </message>
        <message>
            <source>One of ours, as you measured it. What it brings to mind stays, and nothing changes in a box before you send it there.</source>
            <translation>ہماری ایک چیز، جیسے آپ نے ناپی۔ جن باتوں کا خیال رکھنا تھا وہ رہتی ہیں، اور ڈبے میں کچھ نہیں بدلتا جب تک آپ وہاں نہ بھیجیں۔</translation>
        </message>
        <message>
            <source>Ready for boxes. Change anything, and it is a draft again; the boxes keep what they have.</source>
            <translation>ڈبوں کے لیے تیار۔ کچھ بھی بدلیں تو یہ پھر مسودہ ہے؛ ڈبوں میں جو ہے وہی رہتا ہے۔</translation>
        </message>
        <message>
            <source>See whom it affects</source>
            <translation>دیکھیں کس پر اثر ہے</translation>
        </message>
        <message>
            <source>Send to the chosen boxes</source>
            <translation>چنے ہوئے ڈبوں میں بھیجیں</translation>
        </message>
        <message numerus="yes">
            <source>Something is still to do in %n parts</source>
            <translation>
                <numerusform>ابھی %n حصے میں کچھ باقی ہے</numerusform>
                <numerusform>ابھی %n حصوں میں کچھ باقی ہے</numerusform>
            </translation>
        </message>
        <message>
            <source>Washing and keeping</source>
            <translation>دھلائی اور دیکھ بھال</translation>
        </message>
        <message>
            <source>What is in it, and what to mind</source>
            <translation>اس میں کیا ہے، اور کس بات کا خیال رکھیں</translation>
        </message>
    </context>
    <context>
        <name>OwnItemsScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Nothing of your own yet</source>
            <translation>ابھی اپنا کچھ نہیں</translation>
        </message>
        <message>
            <source>Things of your own</source>
            <translation>آپ کی اپنی چیزیں</translation>
        </message>
        <message>
            <source>Write a new thing</source>
            <translation>نئی چیز لکھیں</translation>
        </message>
        <message>
            <source>Write and measure what you play with, and it goes through the same checks as ours. Where one of ours measures otherwise, say so on its page of the shelf.</source>
            <translation>جس چیز سے آپ کھیلتے ہیں اسے لکھیں اور ناپیں؛ اس کی وہی جانچ ہوگی جو ہماری چیزوں کی ہوتی ہے۔ جہاں ہماری کسی چیز کا ناپ اور ہو، شیلف پر اس کے صفحے پر بتائیں۔</translation>
        </message>
    </context>
    <context>
        <name>OwnKeepingPart</name>
        <message>
            <source>Add a line of care</source>
            <translation>دیکھ بھال کی سطر بڑھائیں</translation>
        </message>
        <message>
            <source>Care, line %1</source>
            <translation>دیکھ بھال، سطر %1</translation>
        </message>
        <message>
            <source>How long it keeps; empty: no limit</source>
            <translation>کتنے دن چلتا ہے؛ خالی: کوئی حد نہیں</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>استعمال میں</translation>
        </message>
        <message>
            <source>Washing</source>
            <translation>دھلائی</translation>
        </message>
        <message>
            <source>What to look for</source>
            <translation>کیا دیکھیں</translation>
        </message>
    </context>
    <context>
        <name>OwnLine</name>
        <message>
            <source>After the ferry</source>
            <translation>فیری آنے کے بعد</translation>
        </message>
        <message>
            <source>Keep these words</source>
            <translation>یہ الفاظ رکھیں</translation>
        </message>
        <message>
            <source>When?</source>
            <translation>کب؟</translation>
        </message>
    </context>
    <context>
        <name>OwnLineList</name>
        <message>
            <source>%1: it changes the %2</source>
            <translation>‏%1: اس سے بدلتا ہے: %2</translation>
        </message>
        <message>
            <source>Take this line out</source>
            <translation>یہ سطر نکال دیں</translation>
        </message>
    </context>
    <context>
        <name>OwnMaterialsPart</name>
        <message>
            <source>Allergens in it</source>
            <translation>اس میں الرجی والی چیزیں</translation>
        </message>
        <message>
            <source>Does it hold anything that goes into no box?</source>
            <translation>کیا اس میں کوئی ایسی چیز ہے جو کسی ڈبے میں نہیں جاتی؟</translation>
        </message>
        <message>
            <source>In play it is</source>
            <translation>کھیل میں یہ</translation>
        </message>
        <message>
            <source>What there is to mind; what follows from its sizes stays</source>
            <translation>کس بات کا خیال رکھیں؛ جو ناپ سے نکلتا ہے وہ رہتا ہے</translation>
        </message>
    </context>
    <context>
        <name>OwnNamesPart</name>
        <message>
            <source>Choose another picture</source>
            <translation>دوسری تصویر چنیں</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>فہرست بند کریں</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>نام سے ڈھونڈیں</translation>
        </message>
        <message>
            <source>Its picture</source>
            <translation>اس کی تصویر</translation>
        </message>
        <message>
            <source>One of ours that comes close.</source>
            <translation>ہماری تصویروں میں سے سب سے قریب۔</translation>
        </message>
        <message>
            <source>One of them</source>
            <translation>ان میں سے ایک</translation>
        </message>
        <message>
            <source>The picture of: %1</source>
            <translation>تصویر: %1</translation>
        </message>
        <message>
            <source>What they are called</source>
            <translation>ان کا نام</translation>
        </message>
        <message>
            <source>wooden bobbin</source>
            <translation>لکڑی کی ریل</translation>
        </message>
        <message>
            <source>wooden bobbins</source>
            <translation>لکڑی کی ریلیں</translation>
        </message>
    </context>
    <context>
        <name>OwnNoteRow</name>
        <message>
            <source>It goes to the therapist with the next exchange.</source>
            <translation>یہ اگلے تبادلے کے ساتھ تھراپسٹ کو جائے گا۔</translation>
        </message>
        <message>
            <source>Keep it here</source>
            <translation>یہیں رکھیں</translation>
        </message>
        <message>
            <source>Keep it here: %1</source>
            <translation>یہیں رکھیں: %1</translation>
        </message>
        <message>
            <source>Send to the therapist</source>
            <translation>تھراپسٹ کو بھیجیں</translation>
        </message>
        <message>
            <source>Send to the therapist: %1</source>
            <translation>تھراپسٹ کو بھیجیں: %1</translation>
        </message>
        <message>
            <source>Take it off</source>
            <translation>ہٹائیں</translation>
        </message>
        <message>
            <source>Take it off: %1</source>
            <translation>ہٹائیں: %1</translation>
        </message>
    </context>
    <context>
        <name>OwnNotesScreen</name>
        <message>
            <source>A note for yourself</source>
            <translation>اپنے لیے ایک نوٹ</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Keep this note</source>
            <translation>یہ نوٹ رکھیں</translation>
        </message>
        <message>
            <source>Notes of your own</source>
            <translation>اپنے نوٹ</translation>
        </message>
        <message>
            <source>Only you see these, on your own phones.</source>
            <translation>یہ صرف آپ کو نظر آتے ہیں، آپ کے اپنے فونوں پر۔</translation>
        </message>
        <message>
            <source>Or with one tap</source>
            <translation>یا ایک بار چھو کر</translation>
        </message>
    </context>
    <context>
        <name>OwnPart</name>
        <message>
            <source>Close: %1</source>
            <translation>بند کریں: %1</translation>
        </message>
        <message>
            <source>Open: %1</source>
            <translation>کھولیں: %1</translation>
        </message>
        <message>
            <source>Something is still to do here</source>
            <translation>یہاں ابھی کچھ باقی ہے</translation>
        </message>
    </context>
    <context>
        <name>OwnPlacePart</name>
        <message>
            <source>About how many go, in how many days</source>
            <translation>تقریباً کتنے ختم ہوتے ہیں، کتنے دنوں میں</translation>
        </message>
        <message>
            <source>After play</source>
            <translation>کھیل کے بعد</translation>
        </message>
        <message>
            <source>One piece less</source>
            <translation>ایک عدد کم</translation>
        </message>
        <message>
            <source>One piece more</source>
            <translation>ایک عدد زیادہ</translation>
        </message>
        <message>
            <source>Pieces in a standard box</source>
            <translation>عام ڈبے میں عدد</translation>
        </message>
        <message>
            <source>Where it lies</source>
            <translation>یہ کہاں رہتا ہے</translation>
        </message>
    </context>
    <context>
        <name>OwnReach</name>
        <message>
            <source>Nothing changes for: %1.</source>
            <translation>ان کے لیے کچھ نہیں بدلتا: %1۔</translation>
        </message>
        <message>
            <source>What it would change</source>
            <translation>اس سے کیا بدلے گا</translation>
        </message>
    </context>
    <context>
        <name>OwnSizesPart</name>
        <message>
            <source>A cord, lace or ribbon</source>
            <translation>ڈوری، تسمہ یا فیتہ</translation>
        </message>
        <message>
            <source>A hollow, such as a cup or a lid</source>
            <translation>کھوکھلا حصہ، جیسے پیالی یا ڈھکن</translation>
        </message>
        <message>
            <source>As small as it may get by use</source>
            <translation>استعمال سے زیادہ سے زیادہ کتنا چھوٹا</translation>
        </message>
        <message>
            <source>It has</source>
            <translation>اس میں ہے</translation>
        </message>
        <message>
            <source>It wears down</source>
            <translation>یہ گھستا ہے</translation>
        </message>
        <message>
            <source>One piece, as it is packed</source>
            <translation>ایک عدد، جیسے ڈبے میں رکھا جاتا ہے</translation>
        </message>
        <message>
            <source>Plastic film: a bag or a sheet</source>
            <translation>پلاسٹک کی جھلی: تھیلی یا چادر</translation>
        </message>
        <message>
            <source>Something comes off it, or can be pulled off</source>
            <translation>کچھ الگ ہوتا ہے، یا کھینچ کر الگ ہو سکتا ہے</translation>
        </message>
        <message>
            <source>The bag</source>
            <translation>تھیلی</translation>
        </message>
        <message>
            <source>The rim</source>
            <translation>کنارہ</translation>
        </message>
        <message>
            <source>Thrown, rolled, kicked or dropped</source>
            <translation>پھینکا، لڑھکایا، لات مارا یا گرایا جاتا ہے</translation>
        </message>
        <message>
            <source>What comes off, part %1</source>
            <translation>جو الگ ہوتا ہے، حصہ %1</translation>
        </message>
    </context>
    <context>
        <name>OwnSkillsPart</name>
        <message>
            <source>And also: two at most</source>
            <translation>اور یہ بھی: زیادہ سے زیادہ دو</translation>
        </message>
        <message>
            <source>What it is for first of all: one or two</source>
            <translation>سب سے پہلے کس لیے ہے: ایک یا دو</translation>
        </message>
    </context>
    <context>
        <name>OwnSolidList</name>
        <message>
            <source>A suction cup, or the tip of a dart</source>
            <translation>چوسنے والی پیالی یا تیر کی نوک</translation>
        </message>
        <message>
            <source>Take these sizes out</source>
            <translation>یہ ناپ نکال دیں</translation>
        </message>
    </context>
    <context>
        <name>OwnThingsPart</name>
        <message>
            <source>Can be left out</source>
            <translation>چھوڑی جا سکتی ہے</translation>
        </message>
        <message>
            <source>Close the list</source>
            <translation>فہرست بند کریں</translation>
        </message>
        <message>
            <source>Find it by its name</source>
            <translation>نام سے ڈھونڈیں</translation>
        </message>
        <message>
            <source>Not with this</source>
            <translation>اس کے بغیر</translation>
        </message>
        <message>
            <source>Not with this: %1</source>
            <translation>اس کے بغیر: %1</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک زیادہ: %1</translation>
        </message>
        <message>
            <source>Put a thing in</source>
            <translation>کوئی چیز شامل کریں</translation>
        </message>
        <message>
            <source>Put in: %1</source>
            <translation>شامل کریں: %1</translation>
        </message>
        <message>
            <source>Small pieces come of it</source>
            <translation>اس سے چھوٹے ٹکڑے بنتے ہیں</translation>
        </message>
    </context>
    <context>
        <name>OwnThrowAway</name>
        <message>
            <source>Boxes that have it keep it until you take it back there.</source>
            <translation>جن ڈبوں میں یہ ہے ان میں رہے گی جب تک آپ وہاں سے واپس نہ لیں۔</translation>
        </message>
        <message>
            <source>No, keep it</source>
            <translation>نہیں، رہنے دیں</translation>
        </message>
        <message>
            <source>Throw this draft away</source>
            <translation>یہ مسودہ پھینک دیں</translation>
        </message>
        <message>
            <source>Yes, throw it away</source>
            <translation>جی، پھینک دیں</translation>
        </message>
    </context>
    <context>
        <name>OwnTimePart</name>
        <message>
            <source>Half a year earlier</source>
            <translation>آدھا سال پہلے</translation>
        </message>
        <message>
            <source>Half a year later</source>
            <translation>آدھا سال بعد</translation>
        </message>
        <message>
            <source>How close an adult is</source>
            <translation>بڑا کتنا قریب ہے</translation>
        </message>
        <message>
            <source>Minutes of play</source>
            <translation>کھیل کے منٹ</translation>
        </message>
        <message>
            <source>Minutes to get it out</source>
            <translation>نکالنے کے منٹ</translation>
        </message>
        <message>
            <source>Minutes to put it back</source>
            <translation>واپس رکھنے کے منٹ</translation>
        </message>
        <message>
            <source>One minute less to get it out</source>
            <translation>نکالنے کا ایک منٹ کم</translation>
        </message>
        <message>
            <source>One minute less to put it back</source>
            <translation>واپس رکھنے کا ایک منٹ کم</translation>
        </message>
        <message>
            <source>One minute more to get it out</source>
            <translation>نکالنے کا ایک منٹ زیادہ</translation>
        </message>
        <message>
            <source>One minute more to put it back</source>
            <translation>واپس رکھنے کا ایک منٹ زیادہ</translation>
        </message>
        <message>
            <source>One minute of play less</source>
            <translation>کھیل کا ایک منٹ کم</translation>
        </message>
        <message>
            <source>One minute of play more</source>
            <translation>کھیل کا ایک منٹ زیادہ</translation>
        </message>
        <message>
            <source>The earliest age; what it is played with sets the lowest</source>
            <translation>کم سے کم عمر؛ کھیل کی چیزیں نچلی حد طے کرتی ہیں</translation>
        </message>
        <message>
            <source>Why not earlier</source>
            <translation>پہلے کیوں نہیں</translation>
        </message>
    </context>
    <context>
        <name>OwnWayPart</name>
        <message>
            <source>From a chair or a wheelchair</source>
            <translation>کرسی یا وہیل چیئر سے</translation>
        </message>
        <message>
            <source>Hands it takes</source>
            <translation>کتنے ہاتھ چاہییں</translation>
        </message>
        <message>
            <source>How loud it is</source>
            <translation>کتنا شور ہے</translation>
        </message>
        <message>
            <source>How the child sits or stands</source>
            <translation>بچہ کیسے بیٹھتا یا کھڑا ہوتا ہے</translation>
        </message>
        <message>
            <source>Room it takes</source>
            <translation>کتنی جگہ چاہیے</translation>
        </message>
        <message>
            <source>Strength it takes</source>
            <translation>کتنی طاقت چاہیے</translation>
        </message>
        <message>
            <source>What is to clean afterwards</source>
            <translation>بعد میں کیا صاف کرنا ہے</translation>
        </message>
        <message>
            <source>With one hand: what holds still, what the hand does</source>
            <translation>ایک ہاتھ سے: کیا ساکن رہتا ہے، ہاتھ کیا کرتا ہے</translation>
        </message>
    </context>
    <context>
        <name>OwnWordsPart</name>
        <message>
            <source>Its name</source>
            <translation>اس کا نام</translation>
        </message>
        <message>
            <source>What the adult does first</source>
            <translation>بڑا سب سے پہلے کیا کرتا ہے</translation>
        </message>
        <message>
            <source>What the child hears, in one line</source>
            <translation>بچہ کیا سنتا ہے، ایک سطر میں</translation>
        </message>
        <message>
            <source>Which bobbin rolls the longest road?</source>
            <translation>کون سی پھرکی سب سے دور لڑھکتی ہے؟</translation>
        </message>
    </context>
    <context>
        <name>PackBoxScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1، %2 کے لیے</translation>
        </message>
        <message>
            <source>%1: not on this box's list any more</source>
            <translation>‏%1: اب اس ڈبے کی فہرست میں نہیں</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Hand over to %1</source>
            <translation>‏%1 کو دیں</translation>
        </message>
        <message>
            <source>It is out</source>
            <translation>باہر ہے</translation>
        </message>
        <message>
            <source>Looked over: it is right</source>
            <translation>جانچ لیا: ٹھیک ہے</translation>
        </message>
        <message>
            <source>Say whose it is</source>
            <translation>بتائیں کہ یہ کس کا ہے</translation>
        </message>
        <message>
            <source>The therapist's phone hands it over.</source>
            <translation>اسے تھراپسٹ کا فون حوالے کرتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>PackItemScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1، %2 کے لیے</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>It is in all %1 boxes that are not special</source>
            <translation>‏%1 ڈبوں میں ہے جو خاص نہیں</translation>
        </message>
        <message>
            <source>Next thing</source>
            <translation>اگلی چیز</translation>
        </message>
        <message>
            <source>The one before</source>
            <translation>پچھلی</translation>
        </message>
    </context>
    <context>
        <name>PackOfferCard</name>
        <message>
            <source>%1: pieces in it</source>
            <translation>‏%1: اس میں ٹکڑے</translation>
        </message>
        <message>
            <source>%1: price</source>
            <translation>‏%1: قیمت</translation>
        </message>
        <message>
            <source>%1: shop</source>
            <translation>‏%1: دکان</translation>
        </message>
        <message>
            <source>Move up</source>
            <translation>اوپر لے جائیں</translation>
        </message>
        <message>
            <source>Move up: %1</source>
            <translation>اوپر لے جائیں: %1</translation>
        </message>
        <message>
            <source>Pack %1</source>
            <translation>پیکٹ %1</translation>
        </message>
        <message>
            <source>Pieces in it</source>
            <translation>اس میں ٹکڑے</translation>
        </message>
        <message>
            <source>Price, %1</source>
            <translation>قیمت، %1</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>نکالیں</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>نکالیں: %1</translation>
        </message>
    </context>
    <context>
        <name>PackOfferList</name>
        <message>
            <source>Add a pack</source>
            <translation>ایک پیکٹ شامل کریں</translation>
        </message>
        <message>
            <source>Another pack or shop</source>
            <translation>دوسرا پیکٹ یا دکان</translation>
        </message>
        <message>
            <source>Where it is bought, first choice on top</source>
            <translation>یہ کہاں سے خریدا جاتا ہے، پہلی پسند اوپر</translation>
        </message>
    </context>
    <context>
        <name>PackTick</name>
        <message>
            <source>In. Take it out again</source>
            <translation>اندر ہے۔ واپس نکالیں</translation>
        </message>
        <message>
            <source>It is in</source>
            <translation>اندر ہے</translation>
        </message>
        <message>
            <source>It is out again</source>
            <translation>پھر باہر ہے</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>بایاں</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>دایاں</translation>
        </message>
        <message>
            <source>Which hand is on them?</source>
            <translation>ان پر کون سا ہاتھ لکھا ہے؟</translation>
        </message>
    </context>
    <context>
        <name>PackersScreen</name>
        <message>
            <source>Back to the packing table</source>
            <translation>ڈبے بھرنے کی میز پر واپس</translation>
        </message>
        <message>
            <source>Nobody yet. Whoever you let in sees this table on their own phone, and what each of you ticks comes to the other.</source>
            <translation>ابھی کوئی نہیں۔ جسے آپ شامل کریں وہ یہ میز اپنے فون پر دیکھتا ہے، اور جس پر آپ میں سے ایک نشان لگائے وہ دوسرے تک پہنچتا ہے۔</translation>
        </message>
        <message>
            <source>Who packs with you</source>
            <translation>آپ کے ساتھ کون ڈبے بھرتا ہے</translation>
        </message>
    </context>
    <context>
        <name>PackingScreen</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1، %2 کے لیے</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Boxes of a build lie here, each with its list and its ticks.</source>
            <translation>بھرے جانے والے ڈبے یہاں ہیں، ہر ایک اپنی فہرست اور نشانوں کے ساتھ۔</translation>
        </message>
        <message>
            <source>Boxes that came back</source>
            <translation>واپس آئے ڈبے</translation>
        </message>
        <message>
            <source>Boxes that were out</source>
            <translation>جو ڈبے بچوں کے پاس رہے</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>ڈبوں کا حساب</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>مجموعے اور خریداری</translation>
        </message>
        <message>
            <source>Clean, replace, use no more.</source>
            <translation>صاف کریں، بدلیں، یا ختم کریں۔</translation>
        </message>
        <message>
            <source>No boxes to pack</source>
            <translation>بھرنے کو کوئی ڈبہ نہیں</translation>
        </message>
        <message>
            <source>On a phone of their own; ticks go both ways.</source>
            <translation>اپنے فون پر؛ نشان دونوں طرف جاتے ہیں۔</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>کاغذ پر</translation>
        </message>
        <message>
            <source>Pack item by item</source>
            <translation>ایک ایک چیز کر کے بھریں</translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>بھرنے کی فہرست</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>پیکنگ</translation>
        </message>
        <message>
            <source>Recall a lot</source>
            <translation>لاٹ واپس منگوائیں</translation>
        </message>
        <message>
            <source>Somebody packs with you</source>
            <translation>کوئی آپ کے ساتھ ڈبے بھرتا ہے</translation>
        </message>
        <message>
            <source>Special</source>
            <translation>خاص</translation>
        </message>
        <message>
            <source>Squares to tick, with what is called out.</source>
            <translation>نشان کے خانے، ہر ڈبے کی خاص باتوں کے ساتھ۔</translation>
        </message>
        <message>
            <source>What to buy, and what is in each box.</source>
            <translation>کیا خریدنا ہے، اور ہر ڈبے میں کیا ہے۔</translation>
        </message>
        <message>
            <source>Which boxes hold it.</source>
            <translation>یہ کن ڈبوں میں ہے۔</translation>
        </message>
    </context>
    <context>
        <name>PagesSeen</name>
        <message>
            <source>%1, page %2 of %3</source>
            <translation>‏%1، صفحہ %2، کل %3</translation>
        </message>
        <message>
            <source>As it will come out</source>
            <translation>ایسا چھپے گا</translation>
        </message>
        <message>
            <source>Left half</source>
            <translation>بایاں آدھا</translation>
        </message>
        <message>
            <source>Right half</source>
            <translation>دایاں آدھا</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>پورا صفحہ</translation>
        </message>
    </context>
    <context>
        <name>PicturedCautions</name>
        <message>
            <source>Nothing to be careful with</source>
            <translation>کوئی احتیاط نہیں</translation>
        </message>
        <message>
            <source>The catalogue says</source>
            <translation>کیٹلاگ کہتا ہے</translation>
        </message>
    </context>
    <context>
        <name>PlaceFields</name>
        <message>
            <source>A folder that all your phones reach: on your server (WebDAV), or one that another program keeps alike. What lies there is sealed.</source>
            <translation>وہ فولڈر جس تک آپ کے سب فون پہنچیں: آپ کے سرور پر (WebDAV)، یا وہ جسے کوئی اور پروگرام ایک سا رکھتا ہے۔ وہاں جو ہے وہ مہر بند ہے۔</translation>
        </message>
        <message>
            <source>Address of the place</source>
            <translation>جگہ کا پتا</translation>
        </message>
        <message>
            <source>Name there, if it asks for one</source>
            <translation>وہاں کا نام، اگر پوچھے</translation>
        </message>
        <message>
            <source>Password there</source>
            <translation>وہاں کا پاس ورڈ</translation>
        </message>
        <message>
            <source>Show the password</source>
            <translation>پاس ورڈ دکھائیں</translation>
        </message>
        <message>
            <source>https://example.org/dav/crew</source>
            <translation>‏https://example.org/dav/crew</translation>
        </message>
    </context>
    <context>
        <name>PlanPlace</name>
        <message>
            <source>Another</source>
            <translation>کوئی اور</translation>
        </message>
        <message>
            <source>Another: %1, %2</source>
            <translation>کوئی اور: %1، %2</translation>
        </message>
    </context>
    <context>
        <name>PlayDetails</name>
        <message>
            <source>All cautions</source>
            <translation>سب احتیاطیں</translation>
        </message>
        <message>
            <source>Other ways in</source>
            <translation>اور طریقے</translation>
        </message>
        <message>
            <source>Watch for</source>
            <translation>ان پر نظر</translation>
        </message>
        <message>
            <source>You might say</source>
            <translation>یوں کہا جا سکتا ہے</translation>
        </message>
    </context>
    <context>
        <name>PlayFoot</name>
        <message>
            <source>It burst</source>
            <translation>غبارہ پھٹ گیا</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>کچھ ٹھیک نہیں</translation>
        </message>
        <message>
            <source>Stop here</source>
            <translation>یہاں رکیں</translation>
        </message>
    </context>
    <context>
        <name>PlayScreen</name>
        <message>
            <source>Another child's box</source>
            <translation>کسی اور بچے کا ڈبا</translation>
        </message>
        <message>
            <source>Easier</source>
            <translation>آسان</translation>
        </message>
        <message>
            <source>Harder</source>
            <translation>مشکل</translation>
        </message>
        <message>
            <source>Here, instead</source>
            <translation>یہاں، اس کی جگہ</translation>
        </message>
        <message>
            <source>Less</source>
            <translation>کم دکھائیں</translation>
        </message>
        <message>
            <source>More about this</source>
            <translation>اس کے بارے میں اور</translation>
        </message>
        <message>
            <source>Next step</source>
            <translation>اگلا قدم</translation>
        </message>
        <message>
            <source>One step back</source>
            <translation>ایک قدم پیچھے</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>واپس رکھیں</translation>
        </message>
        <message>
            <source>Step %1 of %2. %3</source>
            <translation>قدم %1، کل %2۔ %3</translation>
        </message>
    </context>
    <context>
        <name>PrintBuildRoute</name>
        <message>
            <source>Back to the packing table</source>
            <translation>بھرنے کی میز پر واپس</translation>
        </message>
    </context>
    <context>
        <name>PrintChoices</name>
        <message>
            <source>Box by box</source>
            <translation>ڈبہ بہ ڈبہ</translation>
        </message>
        <message>
            <source>How families reach the service</source>
            <translation>گھر والے آپ سے کیسے رابطہ کریں</translation>
        </message>
        <message>
            <source>In which order</source>
            <translation>کس ترتیب میں</translation>
        </message>
        <message>
            <source>Item by item</source>
            <translation>چیز بہ چیز</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>زبان</translation>
        </message>
        <message>
            <source>Next week</source>
            <translation>اگلا ہفتہ</translation>
        </message>
        <message>
            <source>One language, or two side by side</source>
            <translation>ایک زبان، یا دو ساتھ ساتھ</translation>
        </message>
        <message>
            <source>Only on this page, and only if you say so.</source>
            <translation>صرف اس صفحے پر، اور صرف اگر آپ کہیں۔</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>کاغذ</translation>
        </message>
        <message>
            <source>Put it on the label</source>
            <translation>لیبل پر لگائیں</translation>
        </message>
        <message>
            <source>Therapy team, 01234 567890</source>
            <translation>تھراپی ٹیم، 01234 567890</translation>
        </message>
        <message>
            <source>This week</source>
            <translation>یہ ہفتہ</translation>
        </message>
        <message>
            <source>Week</source>
            <translation>ہفتہ</translation>
        </message>
        <message>
            <source>With what was played and noticed</source>
            <translation>کیا کھیلا اور دیکھا گیا، اس کے ساتھ</translation>
        </message>
    </context>
    <context>
        <name>PrintPreviewScreen</name>
        <message>
            <source>Back to all prints</source>
            <translation>سب چھپائیوں پر واپس</translation>
        </message>
        <message>
            <source>Keep it as a file</source>
            <translation>فائل کے طور پر رکھیں</translation>
        </message>
        <message>
            <source>There is no page yet.</source>
            <translation>ابھی کوئی صفحہ نہیں۔</translation>
        </message>
    </context>
    <context>
        <name>PrintsScreen</name>
        <message>
            <source>Back to the box</source>
            <translation>ڈبے پر واپس</translation>
        </message>
        <message>
            <source>Look at each page here first. It is kept as a file that any printer takes.</source>
            <translation>پہلے ہر صفحہ یہاں دیکھیں۔ یہ ایسی فائل میں رکھا جاتا ہے جسے ہر پرنٹر لے لیتا ہے۔</translation>
        </message>
        <message>
            <source>On paper</source>
            <translation>کاغذ پر</translation>
        </message>
    </context>
    <context>
        <name>ProblemScreen</name>
        <message>
            <source>Lidlark cannot go on yet</source>
            <translation>‏Lidlark ابھی آگے نہیں چل سکتا</translation>
        </message>
        <message>
            <source>Tried again just now: still the same.</source>
            <translation>ابھی دوبارہ کوشش کی: وہی حال ہے۔</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>دوبارہ کوشش</translation>
        </message>
    </context>
    <context>
        <name>PutBackLines</name>
        <message>
            <source>%1 of %2. %3</source>
            <translation>‏%2 میں سے %1۔ %3</translation>
        </message>
        <message>
            <source>Read these lines aloud</source>
            <translation>یہ سطریں پڑھ کر سنائیں</translation>
        </message>
    </context>
    <context>
        <name>PutBackScreen</name>
        <message>
            <source>%1: %2 home</source>
            <translation>‏%1: %2 واپس</translation>
        </message>
        <message>
            <source>All back in the box?</source>
            <translation>سب واپس ڈبے میں؟</translation>
        </message>
        <message>
            <source>Another child's box</source>
            <translation>کسی اور بچے کا ڈبا</translation>
        </message>
        <message>
            <source>Back to the play</source>
            <translation>واپس کھیل پر</translation>
        </message>
        <message>
            <source>Clear up together</source>
            <translation>مل کر سمیٹ لیں</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Everything home</source>
            <translation>سب کچھ واپس</translation>
        </message>
        <message>
            <source>Lid, last of all</source>
            <translation>ڈھکن، سب سے آخر میں</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>کچھ ٹھیک نہیں</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>کچھ مختلف ہے</translation>
        </message>
        <message>
            <source>Tap each one as it comes back.</source>
            <translation>جو واپس آئے اسے چھوئیں۔</translation>
        </message>
        <message>
            <source>The lid is on</source>
            <translation>ڈھکن لگ گیا</translation>
        </message>
        <message>
            <source>Yes, all back</source>
            <translation>ہاں، سب واپس</translation>
        </message>
    </context>
    <context>
        <name>QuietPicture</name>
        <message>
            <source>%1. Tap for the words.</source>
            <translation>‏%1۔ لفظوں کے لیے چھوئیں۔</translation>
        </message>
    </context>
    <context>
        <name>RecallScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Look for it</source>
            <translation>تلاش کریں</translation>
        </message>
        <message>
            <source>Lot, as it is printed</source>
            <translation>لاٹ، جیسا چھپا ہے</translation>
        </message>
        <message>
            <source>Recall a lot</source>
            <translation>لاٹ واپس منگوائیں</translation>
        </message>
    </context>
    <context>
        <name>ReminderSettings</name>
        <message>
            <source>A quarter of an hour earlier</source>
            <translation>پندرہ منٹ پہلے</translation>
        </message>
        <message>
            <source>A quarter of an hour later</source>
            <translation>پندرہ منٹ بعد</translation>
        </message>
        <message>
            <source>After bath</source>
            <translation>نہانے کے بعد</translation>
        </message>
        <message>
            <source>After school</source>
            <translation>اسکول کے بعد</translation>
        </message>
        <message>
            <source>After tea</source>
            <translation>شام کے کھانے کے بعد</translation>
        </message>
        <message>
            <source>All that the locked screen says</source>
            <translation>لاک اسکرین پر صرف اتنا لکھا ہوتا ہے</translation>
        </message>
        <message>
            <source>At about</source>
            <translation>تقریباً اس وقت</translation>
        </message>
        <message>
            <source>Before bed</source>
            <translation>سونے سے پہلے</translation>
        </message>
        <message>
            <source>One quiet reminder a day</source>
            <translation>دن میں ایک خاموش یاد دہانی</translation>
        </message>
        <message>
            <source>Our own words</source>
            <translation>ہمارے اپنے الفاظ</translation>
        </message>
        <message>
            <source>This phone has nothing to show a reminder with. It stays silent.</source>
            <translation>اس فون میں یاد دہانی دکھانے کو کچھ نہیں۔ وہ خاموش رہتا ہے۔</translation>
        </message>
        <message>
            <source>Without a sound, and not on a day when somebody has played.</source>
            <translation>بغیر آواز کے، اور اس دن نہیں جب کوئی کھیل چکا ہو۔</translation>
        </message>
    </context>
    <context>
        <name>RemoveScreen</name>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>From now on nothing new reaches that phone. What is on it already cannot be fetched back.</source>
            <translation>اب سے اس فون تک نیا کچھ نہیں پہنچتا۔ جو اس پر پہلے سے ہے وہ واپس نہیں لیا جا سکتا۔</translation>
        </message>
        <message>
            <source>Keep in the crew</source>
            <translation>ساتھیوں میں رہنے دیں</translation>
        </message>
        <message>
            <source>Leave now</source>
            <translation>ابھی نکلیں</translation>
        </message>
        <message>
            <source>Leave the crew</source>
            <translation>ساتھیوں سے نکلیں</translation>
        </message>
        <message>
            <source>Stay in</source>
            <translation>اندر رہیں</translation>
        </message>
        <message>
            <source>Take out now</source>
            <translation>ابھی نکال دیں</translation>
        </message>
        <message>
            <source>Take out: %1</source>
            <translation>نکالیں: %1</translation>
        </message>
        <message>
            <source>To come back takes a new code.</source>
            <translation>واپس آنے کے لیے نیا کوڈ چاہیے۔</translation>
        </message>
        <message>
            <source>What %1 noted stays, under that name.</source>
            <translation>‏%1 کا لکھا رہتا ہے، اسی نام سے۔</translation>
        </message>
        <message>
            <source>What is on this phone stays on it. From now on nothing new comes or goes.</source>
            <translation>جو اس فون پر ہے وہ رہتا ہے۔ اب سے نیا کچھ نہ آتا ہے نہ جاتا ہے۔</translation>
        </message>
        <message>
            <source>What you noted stays with the crew, under your name.</source>
            <translation>آپ کا لکھا ساتھیوں کے پاس رہتا ہے، آپ کے نام سے۔</translation>
        </message>
    </context>
    <context>
        <name>ReportScreen</name>
        <message numerus="yes">
            <source>%n boxes left out: what lies in it has no price here, or one in other money.</source>
            <translation>
                <numerusform>‏%n ڈبہ شامل نہیں: اس کے سامان کی قیمت یہاں نہیں، یا کسی اور سکے میں ہے۔</numerusform>
                <numerusform>‏%n ڈبے شامل نہیں: ان کے سامان کی قیمت یہاں نہیں، یا کسی اور سکے میں ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>About %1 of material for each activity that was played</source>
            <translation>ہر کھیلے گئے کھیل پر تقریباً %1 کا سامان</translation>
        </message>
        <message numerus="yes">
            <source>All that lies in %n boxes, over the plays shared with you.</source>
            <translation>
                <numerusform>‏%n ڈبے کا سارا سامان، آپ کو بتائے گئے کھیلوں پر۔</numerusform>
                <numerusform>‏%n ڈبوں کا سارا سامان، آپ کو بتائے گئے کھیلوں پر۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>کام کی میز پر واپس</translation>
        </message>
        <message>
            <source>For a report</source>
            <translation>رپورٹ کے لیے</translation>
        </message>
        <message>
            <source>It counts only plays that families chose to share, and says nothing of whether anybody was helped.</source>
            <translation>اس میں صرف وہ کھیل ہیں جو گھر والوں نے بانٹنا چاہے، اور یہ نہیں بتاتا کہ کسی کو فائدہ ہوا یا نہیں۔</translation>
        </message>
        <message>
            <source>What one play costs is told from ten boxes on: fewer would tell something of one family.</source>
            <translation>ایک کھیل کا خرچ دس ڈبوں سے بتایا جاتا ہے: کم ہوں تو ایک گھر کی بات کھل جائے۔</translation>
        </message>
    </context>
    <context>
        <name>RequestCard</name>
        <message>
            <source>Ask for it</source>
            <translation>مانگیں</translation>
        </message>
        <message>
            <source>Ask for more</source>
            <translation>اور مانگیں</translation>
        </message>
        <message>
            <source>How many came?</source>
            <translation>کتنے آئے؟</translation>
        </message>
        <message>
            <source>It has come: count it in</source>
            <translation>آ گیا: گن کر شامل کریں</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک اور: %1</translation>
        </message>
        <message>
            <source>Put it in the box</source>
            <translation>ڈبے میں رکھیں</translation>
        </message>
    </context>
    <context>
        <name>RequestCards</name>
        <message>
            <source>More of it</source>
            <translation>اور چاہیے</translation>
        </message>
    </context>
    <context>
        <name>RequestsScreen</name>
        <message>
            <source>Back to the box</source>
            <translation>واپس ڈبے پر</translation>
        </message>
        <message>
            <source>Nothing asked for, nothing low</source>
            <translation>کچھ نہیں مانگا، کچھ کم نہیں</translation>
        </message>
        <message>
            <source>Tap an item in the box to ask for more of it.</source>
            <translation>اور مانگنے کو ڈبے کی کسی چیز کو چھوئیں۔</translation>
        </message>
        <message>
            <source>What is asked for</source>
            <translation>کیا مانگا گیا ہے</translation>
        </message>
        <message>
            <source>What to ask for</source>
            <translation>کیا مانگنا ہے</translation>
        </message>
    </context>
    <context>
        <name>ResumeScreen</name>
        <message>
            <source>All back in the box?</source>
            <translation>سب واپس ڈبے میں؟</translation>
        </message>
        <message>
            <source>Go on playing</source>
            <translation>کھیل جاری رکھیں</translation>
        </message>
        <message>
            <source>Something's different</source>
            <translation>کچھ مختلف ہے</translation>
        </message>
        <message>
            <source>We stopped early</source>
            <translation>ہم بیچ میں رک گئے</translation>
        </message>
        <message>
            <source>Yes, all back</source>
            <translation>ہاں، سب واپس</translation>
        </message>
        <message>
            <source>You were playing %1</source>
            <translation>یہ کھیل چل رہا تھا: %1</translation>
        </message>
    </context>
    <context>
        <name>ReviewChoice</name>
        <message>
            <source>A week earlier</source>
            <translation>ایک ہفتہ پہلے</translation>
        </message>
        <message>
            <source>A week later</source>
            <translation>ایک ہفتہ بعد</translation>
        </message>
        <message>
            <source>In %1 weeks</source>
            <translation>‏%1 ہفتوں میں</translation>
        </message>
        <message>
            <source>We look at it again on %1</source>
            <translation>ہم اسے %1 کو دوبارہ دیکھیں گے</translation>
        </message>
        <message>
            <source>When do we look at it again?</source>
            <translation>ہم اسے دوبارہ کب دیکھیں؟</translation>
        </message>
    </context>
    <context>
        <name>ReviseRow</name>
        <message>
            <source>Leave out</source>
            <translation>نکال دیں</translation>
        </message>
        <message>
            <source>One less: %1</source>
            <translation>ایک کم: %1</translation>
        </message>
        <message>
            <source>One more: %1</source>
            <translation>ایک اور: %1</translation>
        </message>
        <message>
            <source>Put in instead: %1</source>
            <translation>اس کی جگہ رکھیں: %1</translation>
        </message>
    </context>
    <context>
        <name>ReviseScreen</name>
        <message>
            <source>Back, nothing is changed</source>
            <translation>واپس، کچھ نہیں بدلا</translation>
        </message>
        <message>
            <source>Change %1's box</source>
            <translation>‏%1 کا ڈبہ بدلیں</translation>
        </message>
        <message>
            <source>Close the catalogue</source>
            <translation>فہرستِ سامان بند کریں</translation>
        </message>
        <message>
            <source>Put something in</source>
            <translation>کچھ رکھیں</translation>
        </message>
        <message>
            <source>Send as revision %1</source>
            <translation>نظرثانی %1 کے طور پر بھیجیں</translation>
        </message>
        <message>
            <source>The list is as it was</source>
            <translation>فہرست ویسی ہی ہے</translation>
        </message>
        <message>
            <source>What this does</source>
            <translation>اس سے کیا ہوگا</translation>
        </message>
        <message>
            <source>Why, in words the family reads</source>
            <translation>وجہ، ان لفظوں میں جو گھر والے پڑھیں گے</translation>
        </message>
    </context>
    <context>
        <name>RoomAdult</name>
        <message>
            <source>A child under three is here.</source>
            <translation>یہاں تین سال سے چھوٹا بچہ ہے۔</translation>
        </message>
        <message>
            <source>How close can you stay?</source>
            <translation>آپ کتنے پاس رہ سکتے ہیں؟</translation>
        </message>
        <message>
            <source>How loud may it be?</source>
            <translation>کتنی آواز ہو سکتی ہے؟</translation>
        </message>
        <message>
            <source>I stay right beside the water</source>
            <translation>میں پانی کے بالکل پاس ہی ہوں</translation>
        </message>
        <message>
            <source>In the same room</source>
            <translation>اسی کمرے میں</translation>
        </message>
        <message>
            <source>Quiet now</source>
            <translation>ابھی خاموشی</translation>
        </message>
        <message>
            <source>Right beside</source>
            <translation>بالکل پاس</translation>
        </message>
        <message>
            <source>Somebody sleeps, or noise is too much.</source>
            <translation>کوئی سو رہا ہے، یا شور زیادہ ہے۔</translation>
        </message>
        <message>
            <source>Within arm's reach</source>
            <translation>بازو کی پہنچ میں</translation>
        </message>
    </context>
    <context>
        <name>RoomScreen</name>
        <message>
            <source>Back to today</source>
            <translation>واپس آج پر</translation>
        </message>
        <message>
            <source>Here with %1. Tap whoever comes or goes.</source>
            <translation>‏%1 کے ساتھ یہاں۔ جو آئے یا جائے اسے چھوئیں۔</translation>
        </message>
        <message>
            <source>Home sheet</source>
            <translation>گھر کا پرچہ</translation>
        </message>
        <message>
            <source>Nobody else</source>
            <translation>اور کوئی نہیں</translation>
        </message>
        <message>
            <source>Nobody has said yet, so everyone at home counts as here.</source>
            <translation>ابھی کسی نے نہیں بتایا، اس لیے گھر کے سب لوگ یہاں گنے جاتے ہیں۔</translation>
        </message>
        <message>
            <source>That's who is here</source>
            <translation>یہاں یہی ہیں</translation>
        </message>
        <message>
            <source>Who is here?</source>
            <translation>یہاں کون ہے؟</translation>
        </message>
    </context>
    <context>
        <name>RoomVisitors</name>
        <message>
            <source>A guest under three</source>
            <translation>تین سال سے چھوٹا مہمان</translation>
        </message>
        <message>
            <source>A guest who puts things in the mouth</source>
            <translation>مہمان جو چیزیں منہ میں ڈالتا ہے</translation>
        </message>
        <message>
            <source>A guest?</source>
            <translation>کوئی مہمان؟</translation>
        </message>
    </context>
    <context>
        <name>RoundScreen</name>
        <message>
            <source>%1: packed</source>
            <translation>‏%1: باندھ لیا</translation>
        </message>
        <message>
            <source>Back to the workbench</source>
            <translation>کام کی میز پر واپس</translation>
        </message>
        <message>
            <source>By post</source>
            <translation>ڈاک سے</translation>
        </message>
        <message>
            <source>How it gets there</source>
            <translation>یہ کیسے پہنچے گا</translation>
        </message>
        <message>
            <source>I have it with me</source>
            <translation>یہ میرے پاس ہے</translation>
        </message>
        <message>
            <source>It is posted</source>
            <translation>ڈاک میں ڈال دیا</translation>
        </message>
        <message>
            <source>Nothing to pack</source>
            <translation>کچھ باندھنا نہیں</translation>
        </message>
        <message>
            <source>On a visit</source>
            <translation>ملاقات پر</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>سامان کا پھیرا</translation>
        </message>
        <message>
            <source>What families ask for stands here, item by item.</source>
            <translation>گھر والے جو مانگتے ہیں وہ یہاں ایک ایک چیز کر کے لکھا ہوتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>SafetyWords</name>
        <message>
            <source>A small piece may lie on the floor. Look now.</source>
            <translation>فرش پر کوئی چھوٹا ٹکڑا ہو سکتا ہے۔ ابھی دیکھیں۔</translation>
        </message>
        <message>
            <source>Anyone who lives here counts, not only your child.</source>
            <translation>یہاں رہنے والا ہر شخص گنا جاتا ہے، صرف آپ کا بچہ نہیں۔</translation>
        </message>
        <message>
            <source>Balloons, rubber bands, many soft balls.</source>
            <translation>غبارے، ربڑ بینڈ، بہت سی نرم گیندیں۔</translation>
        </message>
        <message>
            <source>Bought dough is mostly wheat.</source>
            <translation>خریدا ہوا کھیل کا آٹا زیادہ تر گندم کا ہوتا ہے۔</translation>
        </message>
        <message>
            <source>Bought dough is mostly wheat. A wheat allergy counts as yes, and so does coeliac disease.</source>
            <translation>خریدا ہوا کھیل کا آٹا زیادہ تر گندم کا ہوتا ہے۔ گندم کی الرجی “ہاں” گنی جاتی ہے، اور سیلیک بیماری بھی۔</translation>
        </message>
        <message>
            <source>Does %1 like firm touch?</source>
            <translation>کیا %1 کو دبا کر چھونا پسند ہے؟</translation>
        </message>
        <message>
            <source>Does %1 put things in the mouth?</source>
            <translation>کیا %1 چیزیں منہ میں ڈالتا یا ڈالتی ہے؟</translation>
        </message>
        <message>
            <source>Does anyone here have coeliac disease?</source>
            <translation>کیا یہاں کسی کو سیلیک بیماری ہے؟</translation>
        </message>
        <message>
            <source>Has anyone here spina bifida, had many operations, or reacted to banana, avocado, kiwi or chestnut?</source>
            <translation>کیا یہاں کسی کو اسپائنا بیفیڈا ہے، بہت آپریشن ہوئے ہیں، یا کیلے، ایووکاڈو، کیوی یا شاہ بلوط سے ری ایکشن ہوا ہے؟</translation>
        </message>
        <message>
            <source>In a mouth: wash it before the next play.</source>
            <translation>منہ میں گیا: اگلے کھیل سے پہلے دھوئیں۔</translation>
        </message>
        <message>
            <source>Is anyone here allergic to wheat?</source>
            <translation>کیا یہاں کسی کو گندم سے الرجی ہے؟</translation>
        </message>
        <message>
            <source>Is there a dog or a cat?</source>
            <translation>کیا کوئی کتا یا بلی ہے؟</translation>
        </message>
        <message>
            <source>Is there a high place for the box?</source>
            <translation>کیا ڈبے کے لیے کوئی اونچی جگہ ہے؟</translation>
        </message>
        <message>
            <source>It is in balloons, rubber bands and many soft balls. Spina bifida counts as yes, and so do many operations.</source>
            <translation>یہ غباروں، ربڑ بینڈ اور بہت سی نرم گیندوں میں ہوتا ہے۔ اسپائنا بیفیڈا “ہاں” گنا جاتا ہے، اور بہت سے آپریشن بھی۔</translation>
        </message>
        <message>
            <source>Keep them from small children. A piece of balloon can block a throat.</source>
            <translation>انہیں چھوٹے بچوں سے دور رکھیں۔ غبارے کا ٹکڑا گلا بند کر سکتا ہے۔</translation>
        </message>
        <message>
            <source>Look for the lost piece now</source>
            <translation>کھویا ہوا ٹکڑا ابھی ڈھونڈیں</translation>
        </message>
        <message>
            <source>May have swallowed it, or is choking</source>
            <translation>شاید نگل لیا، یا دم گھٹ رہا ہے</translation>
        </message>
        <message>
            <source>Must anyone avoid latex?</source>
            <translation>کیا کسی کے لیے لیٹکس سے بچنا لازم ہے؟</translation>
        </message>
        <message>
            <source>Must anyone avoid wheat?</source>
            <translation>کیا کسی کے لیے گندم سے بچنا لازم ہے؟</translation>
        </message>
        <message>
            <source>Must anyone here avoid latex?</source>
            <translation>کیا یہاں کسی کے لیے لیٹکس سے بچنا لازم ہے؟</translation>
        </message>
        <message>
            <source>New or unusual drowsiness, a change after a knock to the head, a seizure, trouble breathing, or pain that stops play: get medical help.</source>
            <translation>نئی یا غیر معمولی غنودگی، سر پر چوٹ کے بعد کوئی تبدیلی، دورہ، سانس میں تکلیف، یا ایسا درد جو کھیل روک دے: طبی مدد لیں۔</translation>
        </message>
        <message>
            <source>Not a medical device. It does not test, treat or diagnose, and it does not watch your child for you. Follow your local rules and your therapist.</source>
            <translation>یہ طبی آلہ نہیں۔ یہ نہ جانچتا ہے، نہ علاج کرتا ہے، نہ تشخیص، اور آپ کی جگہ بچے پر نظر نہیں رکھتا۔ اپنے علاقے کے قاعدوں اور اپنے تھراپسٹ کی بات مانیں۔</translation>
        </message>
        <message>
            <source>Not a medical device. Measures and warnings help you to decide, and decide nothing for you: your profession's rules and those of your place come first.</source>
            <translation>یہ طبی آلہ نہیں۔ ناپ اور انتباہ فیصلے میں مدد دیتے ہیں، خود کوئی فیصلہ نہیں کرتے: آپ کے پیشے اور آپ کی جگہ کے اصول پہلے ہیں۔</translation>
        </message>
        <message>
            <source>Not said counts as no.</source>
            <translation>نہ بتایا تو “نہیں” گنا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Not said counts as yes under three.</source>
            <translation>تین سال سے کم عمر میں نہ بتایا تو “ہاں” گنا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Out of reach of small children.</source>
            <translation>چھوٹے بچوں کی پہنچ سے دور۔</translation>
        </message>
        <message>
            <source>Past its date. Throw it away.</source>
            <translation>تاریخ گزر گئی۔ پھینک دیں۔</translation>
        </message>
        <message>
            <source>Pick up every piece now.</source>
            <translation>ہر ٹکڑا ابھی اٹھائیں۔</translation>
        </message>
        <message>
            <source>Salty dough can poison them.</source>
            <translation>نمکین آٹا ان کے لیے زہر ہو سکتا ہے۔</translation>
        </message>
        <message>
            <source>Some things must leave the house. See which.</source>
            <translation>کچھ چیزیں گھر سے نکالنا لازم ہے۔ دیکھیں کون سی۔</translation>
        </message>
        <message>
            <source>Then latex is avoided too. Talk to a clinician about it.</source>
            <translation>پھر لیٹکس سے بھی بچا جاتا ہے۔ کسی طبی ماہر سے بات کریں۔</translation>
        </message>
    </context>
    <context>
        <name>SeesScreen</name>
        <message>
            <source>A parent in another home sees the box and the goals, and their own home's plays, kites and home sheet.</source>
            <translation>دوسرے گھر کے ماں یا باپ ڈبا اور مقصد دیکھتے ہیں، اور اپنے گھر کے کھیل، پتنگیں اور پرچہ۔</translation>
        </message>
        <message>
            <source>As they stand on the day of the invitation, and on until its end.</source>
            <translation>جیسے دعوت کے دن ہیں، اور اس کے آخر تک۔</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Does not see: anything that is written in it.</source>
            <translation>نہیں دیکھتے: اس میں لکھا ہوا کچھ بھی۔</translation>
        </message>
        <message>
            <source>Does not see: goals, notes of others.</source>
            <translation>نہیں دیکھتے: مقصد، دوسروں کے نوٹ۔</translation>
        </message>
        <message>
            <source>Does not see: kites, notes of others.</source>
            <translation>نہیں دیکھتے: پتنگیں، دوسروں کے نوٹ۔</translation>
        </message>
        <message>
            <source>Does not see: notes of others.</source>
            <translation>نہیں دیکھتے: دوسروں کے نوٹ۔</translation>
        </message>
        <message>
            <source>Does not see: plays of others, kites, goals, notes of others.</source>
            <translation>نہیں دیکھتے: دوسروں کے کھیل، پتنگیں، مقصد، دوسروں کے نوٹ۔</translation>
        </message>
        <message>
            <source>Family or carer</source>
            <translation>خاندان یا دیکھ بھال کرنے والے</translation>
        </message>
        <message>
            <source>Guest for a few days</source>
            <translation>چند دن کا مہمان</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>ماں یا باپ</translation>
        </message>
        <message>
            <source>Sees plays only of a home that shares them.</source>
            <translation>کھیل صرف اُس گھر کے دیکھتے ہیں جو انھیں بانٹتا ہے۔</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, goals.</source>
            <translation>دیکھتے ہیں: ڈبا اور گنتی، گھر کا پرچہ، مقصد۔</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, own plays.</source>
            <translation>دیکھتے ہیں: ڈبا اور گنتی، گھر کا پرچہ، اپنے کھیل۔</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, plays, kites, goals.</source>
            <translation>دیکھتے ہیں: ڈبا اور گنتی، گھر کا پرچہ، کھیل، پتنگیں، مقصد۔</translation>
        </message>
        <message>
            <source>Sees: box and counts, home sheet, plays, kites.</source>
            <translation>دیکھتے ہیں: ڈبا اور گنتی، گھر کا پرچہ، کھیل، پتنگیں۔</translation>
        </message>
        <message>
            <source>Sees: that something is there, how large it is, and when it came.</source>
            <translation>دیکھتے ہیں: کہ کچھ وہاں ہے، کتنا بڑا ہے، اور کب آیا۔</translation>
        </message>
        <message>
            <source>The place where it lies</source>
            <translation>وہ جگہ جہاں یہ رکھا ہے</translation>
        </message>
        <message>
            <source>Therapist</source>
            <translation>تھراپسٹ</translation>
        </message>
        <message>
            <source>What each can see</source>
            <translation>کون کیا دیکھ سکتا ہے</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>%1, %2, %3</source>
            <translation>‏%1، %2، %3</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>%1: not on their lid list</source>
            <translation>‏%1: ان کی فہرست میں نہیں</translation>
        </message>
        <message>
            <source>%1: still on its way</source>
            <translation>‏%1: ابھی راستے میں</translation>
        </message>
        <message>
            <source>%1: to be taken out</source>
            <translation>‏%1: نکالنا ہے</translation>
        </message>
        <message>
            <source>Camera on the hands</source>
            <translation>کیمرا ہاتھوں پر</translation>
        </message>
        <message>
            <source>Camera on the whole body</source>
            <translation>کیمرا پورے جسم پر</translation>
        </message>
        <message>
            <source>The work</source>
            <translation>اصل کام</translation>
        </message>
        <message>
            <source>To arrive</source>
            <translation>شروع میں</translation>
        </message>
        <message>
            <source>To part</source>
            <translation>آخر میں</translation>
        </message>
        <message>
            <source>it is nothing for a camera</source>
            <translation>یہ کیمرے کے لیے نہیں</translation>
        </message>
        <message>
            <source>not offered in this home now</source>
            <translation>اس گھر میں ابھی پیش نہیں ہوتا</translation>
        </message>
    </context>
    <context>
        <name>SettingsScreen</name>
        <message>
            <source>%1 works with the left hand</source>
            <translation>‏%1 کا کام کا ہاتھ: بایاں</translation>
        </message>
        <message>
            <source>A reminder</source>
            <translation>یاد دہانی</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Count the pieces aloud</source>
            <translation>ٹکڑے بول کر گنیں</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>گہرا</translation>
        </message>
        <message>
            <source>Dark, and nothing moves. With less than 15 % left nothing moves anyway.</source>
            <translation>گہرے رنگ، اور کچھ نہیں ہلتا۔ جب ۱۵ فیصد سے کم رہ جائے تو ویسے بھی کچھ نہیں ہلتا۔</translation>
        </message>
        <message>
            <source>Hand and motion</source>
            <translation>ہاتھ اور حرکت</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>رنگوں کا تیز فرق</translation>
        </message>
        <message>
            <source>I hold the phone in my left hand</source>
            <translation>فون میرے بائیں ہاتھ میں ہے</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>بڑا</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>روشن</translation>
        </message>
        <message>
            <source>Nothing moves</source>
            <translation>کچھ نہ ہلے</translation>
        </message>
        <message>
            <source>Off, it is nowhere to be seen.</source>
            <translation>بند ہو تو کہیں نظر نہیں آتی۔</translation>
        </message>
        <message>
            <source>Offer the kite before play</source>
            <translation>کھیل سے پہلے پتنگ دکھائیں</translation>
        </message>
        <message>
            <source>One, two, three, as each comes home.</source>
            <translation>ایک، دو، تین، جیسے جیسے واپس آئیں۔</translation>
        </message>
        <message>
            <source>Ordinary</source>
            <translation>عام</translation>
        </message>
        <message>
            <source>Putting back</source>
            <translation>واپس رکھنا</translation>
        </message>
        <message>
            <source>Save the battery</source>
            <translation>بیٹری بچائیں</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>ترتیبات</translation>
        </message>
        <message>
            <source>Text size</source>
            <translation>حروف کا سائز</translation>
        </message>
        <message>
            <source>The activities</source>
            <translation>سرگرمیاں</translation>
        </message>
        <message>
            <source>The kite</source>
            <translation>پتنگ</translation>
        </message>
        <message>
            <source>The pictures change hands, where they can.</source>
            <translation>جہاں ہو سکے تصویریں ہاتھ بدلتی ہیں۔</translation>
        </message>
        <message>
            <source>Twice as large</source>
            <translation>دگنا بڑا</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>زبان</translation>
        </message>
    </context>
    <context>
        <name>ShareChoice</name>
        <message>
            <source>It starts with the next play, and you can say no on any day. Then nothing more goes, and what went is taken back. What %1 has read or printed by then stays there.</source>
            <translation>یہ اگلے کھیل سے شروع ہوتا ہے، اور آپ کسی بھی دن نہیں کہہ سکتے ہیں۔ پھر کچھ اور نہیں جاتا، اور جو گیا وہ واپس لے لیا جاتا ہے۔ %1 نے تب تک جو پڑھا یا چھاپا وہ وہیں رہتا ہے۔</translation>
        </message>
        <message>
            <source>No</source>
            <translation>نہیں</translation>
        </message>
        <message>
            <source>Share what you play with %1?</source>
            <translation>کیا آپ اپنے کھیل %1 کے ساتھ بانٹیں گے؟</translation>
        </message>
        <message>
            <source>What goes: the names of activities, the day and the part of the day, and what you noticed. Also which phone of yours it came from.</source>
            <translation>کیا جاتا ہے: کھیلوں کے نام، دن اور دن کا حصہ، اور جو آپ نے دیکھا۔ یہ بھی کہ آپ کے کس فون سے آیا۔</translation>
        </message>
        <message>
            <source>What never goes: kites, notes, what was not played or was stopped early, and how often you open the app.</source>
            <translation>کیا کبھی نہیں جاتا: پتنگیں، نوٹ، جو نہیں کھیلا گیا یا بیچ میں رکا، اور آپ ایپ کتنی بار کھولتے ہیں۔</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>ہاں</translation>
        </message>
    </context>
    <context>
        <name>SharedPlaceRoute</name>
        <message>
            <source>Back to letting in</source>
            <translation>واپس اندر آنے دینے پر</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
    </context>
    <context>
        <name>SharedPlaceScreen</name>
        <message>
            <source>An address first.</source>
            <translation>پہلے پتا۔</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Forget this place</source>
            <translation>یہ جگہ بھول جائیں</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>بانٹیں</translation>
        </message>
        <message>
            <source>Share in this way?</source>
            <translation>اس طرح بانٹیں؟</translation>
        </message>
        <message>
            <source>Shared place</source>
            <translation>مشترک جگہ</translation>
        </message>
        <message>
            <source>Stop sharing</source>
            <translation>بانٹنا بند کریں</translation>
        </message>
        <message>
            <source>Try it out</source>
            <translation>آزمائیں</translation>
        </message>
        <message>
            <source>Trying it out.</source>
            <translation>آزمایا جا رہا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>ShelfScreen</name>
        <message>
            <source>Add a thing</source>
            <translation>ایک چیز شامل کریں</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Find by name, shop or lot</source>
            <translation>نام، دکان یا لاٹ سے ڈھونڈیں</translation>
        </message>
        <message>
            <source>Measured by you, so that they may be played with</source>
            <translation>آپ کی ناپی ہوئی، تاکہ ان سے کھیلا جا سکے</translation>
        </message>
        <message>
            <source>No price</source>
            <translation>قیمت نہیں</translation>
        </message>
        <message>
            <source>None left</source>
            <translation>کچھ نہیں بچا</translation>
        </message>
        <message>
            <source>Nothing on the shelf is like that</source>
            <translation>شیلف پر ایسی کوئی چیز نہیں</translation>
        </message>
        <message>
            <source>Shelf and shops</source>
            <translation>شیلف اور دکانیں</translation>
        </message>
        <message>
            <source>Take out a word or a peg to see more.</source>
            <translation>مزید دیکھنے کے لیے کوئی لفظ یا چٹکی ہٹائیں۔</translation>
        </message>
        <message>
            <source>Things of your own</source>
            <translation>آپ کی اپنی چیزیں</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>کھیل میں ختم ہو جاتا ہے</translation>
        </message>
    </context>
    <context>
        <name>ShelfWords</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1 کی قیمت %2</translation>
        </message>
        <message>
            <source>%1 in a pack, no price yet</source>
            <translation>پیکٹ میں %1، ابھی قیمت نہیں</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces</source>
            <translation>
                <numerusform>‏%n ٹکڑا</numerusform>
                <numerusform>‏%n ٹکڑے</numerusform>
            </translation>
        </message>
        <message>
            <source>None left</source>
            <translation>کچھ نہیں بچا</translation>
        </message>
    </context>
    <context>
        <name>SkillChoice</name>
        <message>
            <source>What practises it</source>
            <translation>اس کی مشق کس سے ہو</translation>
        </message>
        <message>
            <source>What practises it (%1 chosen)</source>
            <translation>اس کی مشق کس سے ہو (%1 چنے)</translation>
        </message>
        <message>
            <source>What practises it: the offers go by this</source>
            <translation>اس کی مشق کس سے ہو: تجاویز اسی پر چلتی ہیں</translation>
        </message>
    </context>
    <context>
        <name>SomebodyKnocks</name>
        <message>
            <source>Do both phones show these three words?</source>
            <translation>کیا دونوں فون یہ تین لفظ دکھاتے ہیں؟</translation>
        </message>
        <message>
            <source>Not this phone</source>
            <translation>یہ فون نہیں</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>ایک لمحہ۔</translation>
        </message>
        <message>
            <source>Somebody is here: %1</source>
            <translation>کوئی آیا ہے: %1</translation>
        </message>
        <message>
            <source>Yes, let %1 in</source>
            <translation>ہاں، آنے دیں: %1</translation>
        </message>
        <message>
            <source>Yes, let in</source>
            <translation>ہاں، آنے دیں</translation>
        </message>
    </context>
    <context>
        <name>StepPage</name>
        <message>
            <source>Read this step aloud</source>
            <translation>یہ قدم پڑھ کر سنائیں</translation>
        </message>
        <message>
            <source>Step %1 of %2</source>
            <translation>قدم %1، کل %2</translation>
        </message>
    </context>
    <context>
        <name>SupplyScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Back, nothing is changed</source>
            <translation>واپس، کچھ نہیں بدلا</translation>
        </message>
        <message>
            <source>Change its sizes and materials</source>
            <translation>اس کے ناپ اور مواد بدلیں</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>محفوظ کریں</translation>
        </message>
        <message>
            <source>Keep what you have written first.</source>
            <translation>پہلے جو لکھا ہے اسے محفوظ کریں۔</translation>
        </message>
        <message>
            <source>Lot %1</source>
            <translation>لاٹ %1</translation>
        </message>
        <message>
            <source>Nothing is changed yet</source>
            <translation>ابھی کچھ نہیں بدلا</translation>
        </message>
        <message>
            <source>Say what you measured, and see whose box it changes.</source>
            <translation>بتائیں آپ نے کیا ناپا، اور دیکھیں کس کا ڈبہ بدلتا ہے۔</translation>
        </message>
        <message>
            <source>Which boxes hold this lot</source>
            <translation>یہ لاٹ کن ڈبوں میں ہے</translation>
        </message>
        <message>
            <source>Yours measures otherwise</source>
            <translation>آپ والے کا ناپ اور ہے</translation>
        </message>
    </context>
    <context>
        <name>SwitchRing</name>
        <message>
            <source>Out of here</source>
            <translation>یہاں سے باہر</translation>
        </message>
    </context>
    <context>
        <name>SwitchSettings</name>
        <message>
            <source>%1 s</source>
            <translation>‏%1 سیکنڈ</translation>
        </message>
        <message>
            <source>Everything takes its turn in a ring. Any key, or a touch anywhere, presses what is in it.</source>
            <translation>گھیرا باری باری ہر چیز پر آتا ہے۔ کوئی بھی بٹن، یا کہیں بھی چھونا، گھیرے والی چیز دبا دیتا ہے۔</translation>
        </message>
        <message>
            <source>How long the ring stays</source>
            <translation>گھیرا کتنی دیر ٹھہرے</translation>
        </message>
        <message>
            <source>No switch</source>
            <translation>کوئی سوئچ نہیں</translation>
        </message>
        <message>
            <source>One key moves the ring on. Space or Enter presses what is in it.</source>
            <translation>ایک بٹن گھیرا آگے بڑھاتا ہے۔ Space یا Enter گھیرے والی چیز دبا دیتا ہے۔</translation>
        </message>
        <message>
            <source>One switch</source>
            <translation>ایک سوئچ</translation>
        </message>
        <message>
            <source>Switches</source>
            <translation>سوئچ</translation>
        </message>
        <message>
            <source>The ring moves on sooner</source>
            <translation>گھیرا جلدی آگے بڑھے</translation>
        </message>
        <message>
            <source>The ring stays longer</source>
            <translation>گھیرا زیادہ دیر ٹھہرے</translation>
        </message>
        <message>
            <source>Two switches</source>
            <translation>دو سوئچ</translation>
        </message>
    </context>
    <context>
        <name>TakeOff</name>
        <message>
            <source>%1: box, plays and home sheet leave this phone. Until Lidlark is closed they can be brought back.</source>
            <translation>‏%1: ڈبا، کھیل اور گھر کا پرچہ اس فون سے ہٹ جائیں گے۔ Lidlark بند ہونے تک انہیں واپس لایا جا سکتا ہے۔</translation>
        </message>
        <message>
            <source>Box, plays and home sheet.</source>
            <translation>ڈبا، کھیل اور گھر کا پرچہ۔</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>رہنے دیں</translation>
        </message>
        <message>
            <source>Take off</source>
            <translation>ہٹائیں</translation>
        </message>
        <message>
            <source>Take off this phone: %1</source>
            <translation>اس فون سے ہٹائیں: %1</translation>
        </message>
    </context>
    <context>
        <name>TakeOutRow</name>
        <message>
            <source>Taken out</source>
            <translation>باہر نکالا</translation>
        </message>
    </context>
    <context>
        <name>TakeOutScreen</name>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Look round the house too</source>
            <translation>گھر میں بھی دیکھیں</translation>
        </message>
        <message>
            <source>Something is wrong</source>
            <translation>کچھ ٹھیک نہیں</translation>
        </message>
        <message>
            <source>Take out of the house</source>
            <translation>گھر سے باہر نکالیں</translation>
        </message>
        <message>
            <source>The rest later</source>
            <translation>باقی بعد میں</translation>
        </message>
    </context>
    <context>
        <name>TendScreen</name>
        <message>
            <source>All clean. It can be packed for another child.</source>
            <translation>سب صاف ہے۔ دوسرے بچے کے لیے بھرا جا سکتا ہے۔</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Boxes that came back</source>
            <translation>واپس آئے ڈبے</translation>
        </message>
        <message>
            <source>It came back</source>
            <translation>واپس آ گیا</translation>
        </message>
        <message>
            <source>Lot of the new one, if it has one</source>
            <translation>نئی چیز کا لاٹ، اگر ہو</translation>
        </message>
        <message>
            <source>No box has been handed over</source>
            <translation>ابھی کوئی ڈبہ نہیں دیا گیا</translation>
        </message>
        <message>
            <source>Not yet, after all</source>
            <translation>دراصل ابھی نہیں</translation>
        </message>
        <message>
            <source>Once one has, it stands here until it is used no more.</source>
            <translation>جب دیا جائے گا، استعمال رہنے تک یہاں رہے گا۔</translation>
        </message>
        <message>
            <source>Replaced by a new one</source>
            <translation>نئی سے بدل دی</translation>
        </message>
        <message>
            <source>Soap and water</source>
            <translation>صابن اور پانی</translation>
        </message>
        <message>
            <source>Use this box no more</source>
            <translation>یہ ڈبہ اب استعمال نہ کریں</translation>
        </message>
        <message>
            <source>Washing machine</source>
            <translation>واشنگ مشین</translation>
        </message>
        <message>
            <source>Wiped</source>
            <translation>پونچھا گیا</translation>
        </message>
    </context>
    <context>
        <name>ThingsToPutIn</name>
        <message>
            <source>Close the list of things</source>
            <translation>چیزوں کی فہرست بند کریں</translation>
        </message>
        <message>
            <source>Put in: %1</source>
            <translation>رکھیں: %1</translation>
        </message>
        <message>
            <source>Put something in</source>
            <translation>کچھ رکھیں</translation>
        </message>
    </context>
    <context>
        <name>TodayHead</name>
        <message>
            <source>In the room: %1</source>
            <translation>کمرے میں: %1</translation>
        </message>
        <message>
            <source>Play with %1</source>
            <translation>‏%1 کے ساتھ کھیلیں</translation>
        </message>
        <message>
            <source>Who is here? Perhaps %1</source>
            <translation>یہاں کون ہے؟ شاید %1</translation>
        </message>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>اور %n مزید</numerusform>
                <numerusform>اور %n مزید</numerusform>
            </translation>
        </message>
        <message>
            <source>in the room</source>
            <translation>کمرے میں</translation>
        </message>
        <message>
            <source>who is here?</source>
            <translation>یہاں کون ہے؟</translation>
        </message>
    </context>
    <context>
        <name>TodayNotes</name>
        <message>
            <source>Box: %1</source>
            <translation>ڈبا: %1</translation>
        </message>
        <message>
            <source>Said by %1. Tap when it is here.</source>
            <translation>‏%1 نے بتایا۔ یہاں ہو تو چھوئیں۔</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>دوبارہ کوشش</translation>
        </message>
    </context>
    <context>
        <name>TodayScreen</name>
        <message>
            <source>%1 chooses</source>
            <translation>‏%1 خود چنے</translation>
        </message>
        <message>
            <source>Anything at all</source>
            <translation>کچھ بھی</translation>
        </message>
        <message>
            <source>Everything</source>
            <translation>سب کچھ</translation>
        </message>
        <message>
            <source>Kept for today: %1</source>
            <translation>آج کے لیے رکھا: %1</translation>
        </message>
        <message>
            <source>Minutes: out %1. play %2. back %3</source>
            <translation>منٹ: نکالیں %1۔ کھیل %2۔ واپس %3</translation>
        </message>
        <message>
            <source>The week ahead</source>
            <translation>آنے والا ہفتہ</translation>
        </message>
        <message>
            <source>Three others</source>
            <translation>تین اور</translation>
        </message>
        <message>
            <source>Video session: have ready</source>
            <translation>ویڈیو ملاقات: تیار رکھیں</translation>
        </message>
        <message>
            <source>back %1</source>
            <translation>واپس %1</translation>
        </message>
        <message>
            <source>out %1</source>
            <translation>نکالیں %1</translation>
        </message>
        <message>
            <source>play %1</source>
            <translation>کھیل %1</translation>
        </message>
    </context>
    <context>
        <name>TogetherScreen</name>
        <message>
            <source>%1 of %2</source>
            <translation>‏%2 میں سے %1</translation>
        </message>
        <message>
            <source>And then?</source>
            <translation>اور پھر؟</translation>
        </message>
        <message>
            <source>Choose something</source>
            <translation>کچھ چنیں</translation>
        </message>
        <message>
            <source>For you, before you play</source>
            <translation>آپ کے لیے، کھیل سے پہلے</translation>
        </message>
        <message>
            <source>Four kite breaths</source>
            <translation>پتنگ کے چار سانس</translation>
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
            <translation>خانوں کی تصویر پڑھیں</translation>
        </message>
        <message>
            <source>Read this picture</source>
            <translation>یہ تصویر پڑھیں</translation>
        </message>
        <message>
            <source>Small letters are enough, and so are the first four of each word.</source>
            <translation>چھوٹے حروف کافی ہیں، اور ہر لفظ کے پہلے چار بھی۔</translation>
        </message>
        <message>
            <source>The nine words on the other phone</source>
            <translation>دوسرے فون کے نو لفظ</translation>
        </message>
        <message>
            <source>Where the picture lies on this phone</source>
            <translation>تصویر اس فون پر کہاں ہے</translation>
        </message>
    </context>
    <context>
        <name>TypedSizes</name>
        <message>
            <source>Across, mm</source>
            <translation>چوڑائی، ملی میٹر</translation>
        </message>
        <message>
            <source>High, mm</source>
            <translation>اونچائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Long, mm</source>
            <translation>لمبائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Millimetres: a number from 0.1 to 2000.</source>
            <translation>ملی میٹر: 0.1 سے 2000 تک عدد۔</translation>
        </message>
        <message>
            <source>Thick, mm</source>
            <translation>موٹائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Thicker than it is wide: that is a rod.</source>
            <translation>چوڑائی سے موٹا ہے: یہ ڈنڈی ہے۔</translation>
        </message>
        <message>
            <source>Wide, mm</source>
            <translation>چوڑائی، ملی میٹر</translation>
        </message>
    </context>
    <context>
        <name>UncheckedNote</name>
        <message>
            <source>Put this away</source>
            <translation>یہ ہٹا دیں</translation>
        </message>
    </context>
    <context>
        <name>VideoPlanScreen</name>
        <message>
            <source>A day earlier</source>
            <translation>ایک دن پہلے</translation>
        </message>
        <message>
            <source>A day later</source>
            <translation>ایک دن بعد</translation>
        </message>
        <message>
            <source>A quarter of an hour earlier</source>
            <translation>پندرہ منٹ پہلے</translation>
        </message>
        <message>
            <source>A quarter of an hour later</source>
            <translation>پندرہ منٹ بعد</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Call it off</source>
            <translation>منسوخ کریں</translation>
        </message>
        <message>
            <source>Call it off: %1</source>
            <translation>منسوخ کریں: %1</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>دن</translation>
        </message>
        <message>
            <source>Nothing can be planned from this box now.</source>
            <translation>اس ڈبے سے ابھی کچھ طے نہیں ہو سکتا۔</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>کھولیں</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>طے کریں</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>وقت</translation>
        </message>
        <message>
            <source>Video session</source>
            <translation>ویڈیو ملاقات</translation>
        </message>
        <message>
            <source>in %1 days</source>
            <translation>‏%1 دن میں</translation>
        </message>
        <message>
            <source>today</source>
            <translation>آج</translation>
        </message>
    </context>
    <context>
        <name>VideoSessionScreen</name>
        <message>
            <source>%1 %2</source>
            <translation>‏%1 %2</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>واپس</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ہو گیا</translation>
        </message>
        <message>
            <source>Easier: %1</source>
            <translation>آسان: %1</translation>
        </message>
        <message>
            <source>Harder: %1</source>
            <translation>مشکل: %1</translation>
        </message>
        <message>
            <source>No video session is planned.</source>
            <translation>کوئی ویڈیو ملاقات طے نہیں۔</translation>
        </message>
        <message>
            <source>Take out of your own box</source>
            <translation>اپنے ڈبے سے نکالیں</translation>
        </message>
        <message>
            <source>The last five minutes: what did you see, and what is next?</source>
            <translation>آخری پانچ منٹ: آپ نے کیا دیکھا، اور آگے کیا؟</translation>
        </message>
        <message>
            <source>The session</source>
            <translation>ملاقات</translation>
        </message>
    </context>
    <context>
        <name>WaitingToBeLetIn</name>
        <message>
            <source>Stop waiting</source>
            <translation>انتظار چھوڑیں</translation>
        </message>
        <message>
            <source>The other phone asks whether both show these three words:</source>
            <translation>دوسرا فون پوچھتا ہے کہ کیا دونوں پر یہ تین لفظ ہیں:</translation>
        </message>
        <message>
            <source>When it has said yes, this phone goes on by itself. You can put it down meanwhile.</source>
            <translation>وہاں سے ہاں ہونے پر یہ فون خود آگے بڑھے گا۔ تب تک آپ اسے رکھ سکتے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>WeekDayRow</name>
        <message>
            <source>Another one</source>
            <translation>کوئی اور</translation>
        </message>
        <message>
            <source>Its choices are below.</source>
            <translation>اس کے انتخاب نیچے ہیں۔</translation>
        </message>
        <message>
            <source>Keep it here</source>
            <translation>یہیں رکھیں</translation>
        </message>
        <message>
            <source>Kept. %1</source>
            <translation>رکھا گیا۔ %1</translation>
        </message>
        <message>
            <source>Leave it free</source>
            <translation>خالی چھوڑیں</translation>
        </message>
        <message>
            <source>Let the plan decide</source>
            <translation>منصوبہ خود طے کرے</translation>
        </message>
        <message>
            <source>Play it now</source>
            <translation>ابھی کھیلیں</translation>
        </message>
    </context>
    <context>
        <name>WeekScreen</name>
        <message>
            <source>All of it is kept</source>
            <translation>سب رکھا گیا</translation>
        </message>
        <message>
            <source>Back to today</source>
            <translation>واپس آج پر</translation>
        </message>
        <message>
            <source>Keep this week</source>
            <translation>یہ ہفتہ رکھیں</translation>
        </message>
        <message>
            <source>One small thing a day, if it suits. Tap a day to change it. Nothing here is owed.</source>
            <translation>دن میں ایک چھوٹی چیز، اگر مناسب ہو۔ بدلنے کو دن چھوئیں۔ یہاں کوئی پابندی نہیں۔</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>ہٹا دیں</translation>
        </message>
        <message>
            <source>Start afresh</source>
            <translation>نئے سرے سے</translation>
        </message>
        <message>
            <source>The week ahead</source>
            <translation>آنے والا ہفتہ</translation>
        </message>
    </context>
    <context>
        <name>WelcomeLine</name>
        <message>
            <source>Three questions and the list in the lid, then you can play. No account.</source>
            <translation>تین سوال اور ڈھکن کی فہرست، پھر آپ کھیل سکتے ہیں۔ کوئی اکاؤنٹ نہیں۔</translation>
        </message>
    </context>
    <context>
        <name>WelcomeScreen</name>
        <message>
            <source>A box has come</source>
            <translation>ایک ڈبا آیا ہے</translation>
        </message>
        <message>
            <source>A name first; a letter will do.</source>
            <translation>پہلے ایک نام؛ ایک حرف بھی چلے گا۔</translation>
        </message>
        <message>
            <source>Back to the crew</source>
            <translation>واپس ساتھیوں پر</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>شروع</translation>
        </message>
        <message>
            <source>From somebody who has this box on their phone</source>
            <translation>کسی ایسے سے جس کے فون پر یہ ڈبا ہے</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>آگے</translation>
        </message>
        <message>
            <source>How old is %1?</source>
            <translation>‏%1 کی عمر کیا ہے؟</translation>
        </message>
        <message>
            <source>I am a therapist: I pack boxes for children</source>
            <translation>میں معالج ہوں: میں بچوں کے لیے ڈبے بھرتا ہوں</translation>
        </message>
        <message>
            <source>I have a code</source>
            <translation>میرے پاس کوڈ ہے</translation>
        </message>
        <message>
            <source>Later</source>
            <translation>بعد میں</translation>
        </message>
        <message>
            <source>One page back</source>
            <translation>ایک صفحہ پیچھے</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>صفحہ %1، کل %2</translation>
        </message>
        <message>
            <source>What lies in the box?</source>
            <translation>ڈبے میں کیا ہے؟</translation>
        </message>
        <message>
            <source>What must stay away?</source>
            <translation>کن چیزوں سے بچنا لازم ہے؟</translation>
        </message>
        <message>
            <source>Who else is at home?</source>
            <translation>گھر میں اور کون ہے؟</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>پہلے آپ کا نام؛ ایک حرف بھی چلے گا۔</translation>
        </message>
    </context>
    <context>
        <name>WhatGoesOut</name>
        <message>
            <source>It is sealed on this phone. Only phones that a parent or the therapist has let in can open it, and each only its part. Notes of your own stay here.</source>
            <translation>اس پر یہیں فون پر مہر لگتی ہے۔ صرف وہ فون کھول سکتے ہیں جنھیں ماں باپ یا تھراپسٹ نے آنے دیا، اور ہر ایک صرف اپنا حصہ۔ آپ کے اپنے نوٹ یہیں رہتے ہیں۔</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>ابھی نہیں</translation>
        </message>
        <message>
            <source>What is noted about the box, the home and the play, under the names used here. No surname, no photo, no place on a map.</source>
            <translation>ڈبے، گھر اور کھیل کے بارے میں لکھا ہوا، انہی ناموں سے جو یہاں ہیں۔ نہ خاندانی نام، نہ تصویر، نہ نقشے پر جگہ۔</translation>
        </message>
        <message>
            <source>What leaves this phone</source>
            <translation>اس فون سے کیا باہر جاتا ہے</translation>
        </message>
        <message>
            <source>You can stop at any time with one tap. What others have by then stays with them.</source>
            <translation>آپ کسی بھی وقت ایک بار چھو کر روک سکتے ہیں۔ تب تک جو دوسروں کے پاس ہے وہ ان کے پاس رہتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>WhereItGoes</name>
        <message>
            <source>%1 writes on this phone</source>
            <translation>اس فون پر نام: %1</translation>
        </message>
        <message>
            <source>A guest until %1: plays and puts back, and sees no goals, notes or kites.</source>
            <translation>‏%1 تک مہمان: کھیل سکتے ہیں اور چیزیں واپس رکھ سکتے ہیں؛ مقصد، نوٹ اور پتنگیں نظر نہیں آتیں۔</translation>
        </message>
        <message>
            <source>At work with the shared place.</source>
            <translation>مشترک جگہ کے ساتھ کام ہو رہا ہے۔</translation>
        </message>
        <message>
            <source>Come in with a new code</source>
            <translation>نئے کوڈ سے اندر آئیں</translation>
        </message>
        <message>
            <source>Nothing leaves it. There is no account, and nobody counts how often you play.</source>
            <translation>یہاں سے کچھ باہر نہیں جاتا۔ کوئی اکاؤنٹ نہیں، اور کوئی نہیں گنتا کہ آپ کتنا کھیلتے ہیں۔</translation>
        </message>
        <message>
            <source>Share now</source>
            <translation>ابھی بانٹیں</translation>
        </message>
        <message>
            <source>This phone has no keychain, so its keys lie in a file: who can read the phone's files can read them.</source>
            <translation>اس فون میں کنجیوں کی جگہ نہیں، اس لیے اس کی کنجیاں ایک فائل میں ہیں: جو فون کی فائلیں پڑھ سکے وہ انھیں پڑھ سکتا ہے۔</translation>
        </message>
        <message>
            <source>This phone is not in the crew now: nothing it notes goes out, and nothing new comes. What is on it stays, and goes to the crew once it is in again.</source>
            <translation>یہ فون ابھی ساتھیوں میں نہیں: اس کا لکھا باہر نہیں جاتا، اور کچھ نیا نہیں آتا۔ جو اس پر ہے وہ رہتا ہے، اور دوبارہ اندر آنے پر ساتھیوں کو جاتا ہے۔</translation>
        </message>
        <message>
            <source>What is noted goes to the crew, sealed: the place where it lies cannot read it. There is no account, and nobody counts how often you play.</source>
            <translation>لکھا ہوا مہر بند ہو کر ساتھیوں کو جاتا ہے: جہاں رکھا ہے وہ جگہ اسے پڑھ نہیں سکتی۔ کوئی اکاؤنٹ نہیں، اور کوئی نہیں گنتا کہ آپ کتنا کھیلتے ہیں۔</translation>
        </message>
        <message>
            <source>What is packed goes to whoever packs too, sealed: the place where it lies cannot read it. There is no account.</source>
            <translation>جو ڈبے میں ڈلا وہ مہر بند ہو کر ساتھ ڈبے بھرنے والوں تک جاتا ہے: جہاں وہ رکھا ہے وہ جگہ اسے پڑھ نہیں سکتی۔ کوئی اکاؤنٹ نہیں۔</translation>
        </message>
    </context>
    <context>
        <name>WhoJoins</name>
        <message>
            <source>Join</source>
            <translation>شامل ہوں</translation>
        </message>
        <message>
            <source>Join, and share in this way?</source>
            <translation>شامل ہوں، اور اس طرح بانٹیں؟</translation>
        </message>
        <message>
            <source>One moment.</source>
            <translation>ایک لمحہ۔</translation>
        </message>
        <message>
            <source>What are you called here?</source>
            <translation>یہاں آپ کو کیا کہتے ہیں؟</translation>
        </message>
        <message>
            <source>Your name first; a letter will do.</source>
            <translation>پہلے آپ کا نام؛ ایک حرف بھی چلے گا۔</translation>
        </message>
    </context>
    <context>
        <name>WhoLooks</name>
        <message>
            <source>That is me</source>
            <translation>یہ میں ہوں</translation>
        </message>
        <message>
            <source>This box is special. Somebody who did not pack a thing looks it over.</source>
            <translation>یہ ڈبہ خاص ہے۔ ہر چیز کوئی ایسا جانچے جس نے اسے نہ رکھا ہو۔</translation>
        </message>
        <message>
            <source>Who looks now</source>
            <translation>اب کون جانچ رہا ہے</translation>
        </message>
    </context>
    <context>
        <name>WhoWrites</name>
        <message>
            <source>Who writes now</source>
            <translation>ابھی کون لکھ رہا ہے</translation>
        </message>
    </context>
    <context>
        <name>Whom</name>
        <message>
            <source>A day less</source>
            <translation>ایک دن کم</translation>
        </message>
        <message>
            <source>A day more</source>
            <translation>ایک دن زیادہ</translation>
        </message>
        <message>
            <source>For how many days</source>
            <translation>کتنے دن کے لیے</translation>
        </message>
        <message>
            <source>Until %1, that day too</source>
            <translation>‏%1 تک، وہ دن بھی</translation>
        </message>
        <message>
            <source>Who is it? This decides what they can see. Whoever is let in writes under their own name.</source>
            <translation>یہ کون ہیں؟ اسی سے طے ہوتا ہے کہ وہ کیا دیکھیں گے۔ جو آئے وہ اپنے نام سے لکھتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>WhoseScreen</name>
        <message>
            <source>%1 waits with %2.</source>
            <translation>یہ کھیل انتظار میں ہے: %1۔ بچہ: %2۔</translation>
        </message>
        <message>
            <source>%1's box</source>
            <translation>ڈبا: %1</translation>
        </message>
        <message>
            <source>Back to the play</source>
            <translation>واپس کھیل پر</translation>
        </message>
        <message>
            <source>Whose box?</source>
            <translation>کس کا ڈبا؟</translation>
        </message>
    </context>
    <context>
        <name>WordsSettings</name>
        <message>
            <source>Made by a machine, not yet checked by a person. Words that keep somebody safe show the English too.</source>
            <translation>ترجمہ مشین کا ہے، ابھی کسی انسان نے نہیں جانچا۔ جو الفاظ کسی کو محفوظ رکھتے ہیں، وہ انگریزی میں بھی لکھے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>WorkbenchScreen</name>
        <message>
            <source>Activities of your own</source>
            <translation>آپ کی اپنی سرگرمیاں</translation>
        </message>
        <message>
            <source>Builds and buying</source>
            <translation>مجموعے اور خریداری</translation>
        </message>
        <message>
            <source>Builds, boxes that come back, lots</source>
            <translation>ڈبوں کی تیاری، واپس آنے والے ڈبے، کھیپیں</translation>
        </message>
        <message>
            <source>For a report</source>
            <translation>رپورٹ کے لیے</translation>
        </message>
        <message>
            <source>No box is with a child yet</source>
            <translation>ابھی کوئی ڈبہ کسی بچے کے پاس نہیں</translation>
        </message>
        <message>
            <source>No child's box is on it. What you tick goes to the therapist's phone, and what is ticked there comes here.</source>
            <translation>اس پر کسی بچے کا ڈبہ نہیں۔ جس پر آپ نشان لگائیں وہ تھراپسٹ کے فون پر جاتا ہے، اور جو نشان وہاں لگے وہ یہاں آتا ہے۔</translation>
        </message>
        <message>
            <source>Packing table</source>
            <translation>ڈبے بھرنے کی میز</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>سامان کا پھیرا</translation>
        </message>
        <message>
            <source>Say what belongs in a box, begin a build and pack it. Once a box is handed over, the family comes in by a code, and their box stands here.</source>
            <translation>بتائیں کہ ڈبے میں کیا ہو، تیاری شروع کریں اور ڈبہ بھریں۔ ڈبہ دینے کے بعد خاندان کوڈ سے آتا ہے، اور ان کا ڈبہ یہاں نظر آتا ہے۔</translation>
        </message>
        <message>
            <source>This phone packs</source>
            <translation>یہ فون ڈبے بھرنے کے لیے ہے</translation>
        </message>
        <message>
            <source>What one play costs, over many boxes</source>
            <translation>ایک کھیل کا خرچ، بہت سے ڈبوں سے</translation>
        </message>
        <message>
            <source>What to buy, for which boxes</source>
            <translation>کیا خریدنا ہے، کن ڈبوں کے لیے</translation>
        </message>
        <message>
            <source>Workbench</source>
            <translation>کام کی میز</translation>
        </message>
        <message>
            <source>Written by you, with the same checks as ours</source>
            <translation>آپ کی لکھی ہوئی، اسی جانچ کے ساتھ جو ہماری ہے</translation>
        </message>
    </context>
    <context>
        <name>core</name>
        <message>
            <source>&quot;%1&quot; is not a word of these codes. Did it say &quot;%2&quot;?</source>
            <translation>‏“%1” ان کوڈوں کا لفظ نہیں۔ کیا وہاں “%2” تھا؟</translation>
        </message>
        <message>
            <source>&quot;%1&quot; is not a word of these codes. Look at it again on the other phone.</source>
            <translation>‏“%1” ان کوڈوں کا لفظ نہیں۔ دوسرے فون پر پھر دیکھیں۔</translation>
        </message>
        <message>
            <source>%1</source>
            <translation>‏%1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>‏%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 are missing.</source>
            <translation>‏%1 %2 غائب ہیں۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 back in the box</source>
            <translation>
                <numerusform>واپس ڈبے میں: %1 %2</numerusform>
                <numerusform>واپس ڈبے میں: %1 %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 broken</source>
            <translation>ٹوٹا ہوا: %1 %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 counted in</source>
            <translation>
                <numerusform>گن کر شامل: %1 %2</numerusform>
                <numerusform>گن کر شامل: %1 %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 dried out</source>
            <translation>سوکھا ہوا: %1 %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 %2 found</source>
            <translation>
                <numerusform>مل گیا: %1 %2</numerusform>
                <numerusform>مل گئے: %1 %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 %2 gone</source>
            <translation>کم: %1 %2</translation>
        </message>
        <message>
            <source>%1 %2 lost</source>
            <translation>گم: %1 %2</translation>
        </message>
        <message>
            <source>%1 %2 still in use</source>
            <translation>ابھی استعمال میں: %1 %2</translation>
        </message>
        <message>
            <source>%1 %2 used up</source>
            <translation>ختم: %1 %2</translation>
        </message>
        <message>
            <source>%1 (%2) instead of %3 (%4).</source>
            <translation>‏%3 (%4) کی جگہ %1 (%2)۔</translation>
        </message>
        <message>
            <source>%1 April</source>
            <translation>‏%1 اپریل</translation>
        </message>
        <message>
            <source>%1 April %2</source>
            <translation>‏%1 اپریل %2</translation>
        </message>
        <message>
            <source>%1 August</source>
            <translation>‏%1 اگست</translation>
        </message>
        <message>
            <source>%1 August %2</source>
            <translation>‏%1 اگست %2</translation>
        </message>
        <message>
            <source>%1 December</source>
            <translation>‏%1 دسمبر</translation>
        </message>
        <message>
            <source>%1 December %2</source>
            <translation>‏%1 دسمبر %2</translation>
        </message>
        <message>
            <source>%1 February</source>
            <translation>‏%1 فروری</translation>
        </message>
        <message>
            <source>%1 February %2</source>
            <translation>‏%1 فروری %2</translation>
        </message>
        <message>
            <source>%1 January</source>
            <translation>‏%1 جنوری</translation>
        </message>
        <message>
            <source>%1 January %2</source>
            <translation>‏%1 جنوری %2</translation>
        </message>
        <message>
            <source>%1 July</source>
            <translation>‏%1 جولائی</translation>
        </message>
        <message>
            <source>%1 July %2</source>
            <translation>‏%1 جولائی %2</translation>
        </message>
        <message>
            <source>%1 June</source>
            <translation>‏%1 جون</translation>
        </message>
        <message>
            <source>%1 June %2</source>
            <translation>‏%1 جون %2</translation>
        </message>
        <message>
            <source>%1 March</source>
            <translation>‏%1 مارچ</translation>
        </message>
        <message>
            <source>%1 March %2</source>
            <translation>‏%1 مارچ %2</translation>
        </message>
        <message>
            <source>%1 May</source>
            <translation>‏%1 مئی</translation>
        </message>
        <message>
            <source>%1 May %2</source>
            <translation>‏%1 مئی %2</translation>
        </message>
        <message>
            <source>%1 Noted: %2</source>
            <translation>‏%1 لکھا ہے: %2</translation>
        </message>
        <message>
            <source>%1 November</source>
            <translation>‏%1 نومبر</translation>
        </message>
        <message>
            <source>%1 November %2</source>
            <translation>‏%1 نومبر %2</translation>
        </message>
        <message>
            <source>%1 October</source>
            <translation>‏%1 اکتوبر</translation>
        </message>
        <message>
            <source>%1 October %2</source>
            <translation>‏%1 اکتوبر %2</translation>
        </message>
        <message>
            <source>%1 September</source>
            <translation>‏%1 ستمبر</translation>
        </message>
        <message>
            <source>%1 September %2</source>
            <translation>‏%1 ستمبر %2</translation>
        </message>
        <message>
            <source>%1 Why: %2</source>
            <translation>‏%1 کیوں: %2</translation>
        </message>
        <message>
            <source>%1 afternoon</source>
            <translation>‏%1، سہ پہر</translation>
        </message>
        <message>
            <source>%1 and %2 are under three and are here: no %3.</source>
            <translation>‏%1 اور %2 کی عمر تین سال سے کم ہے اور وہ یہاں موجود ہیں: %3 نہیں۔</translation>
        </message>
        <message>
            <source>%1 and %2 each noted %3 %4.</source>
            <translation>‏%1 اور %2 دونوں نے %4 لکھا: %3۔</translation>
        </message>
        <message>
            <source>%1 and %2 live here: no %3 in this home at any time.</source>
            <translation>‏%1 اور %2 کا گھر یہی ہے: اس گھر میں کسی وقت بھی %3 نہیں۔</translation>
        </message>
        <message>
            <source>%1 and %2 may put things in the mouth: no %3.</source>
            <translation>ممکن ہے %1 اور %2 چیزیں منہ میں ڈالیں: %3 نہیں۔</translation>
        </message>
        <message>
            <source>%1 answered that question before. Nothing was lost, and that answer stands.</source>
            <translation>اس سوال کا جواب %1 کی طرف سے پہلے آ چکا ہے۔ کچھ ضائع نہیں ہوا، اور وہی جواب قائم ہے۔</translation>
        </message>
        <message>
            <source>%1 boxes more: nothing more to pay.</source>
            <translation>‏%1 ڈبے اور: مزید کچھ نہیں دینا۔</translation>
        </message>
        <message>
            <source>%1 boxes more: nothing more to pay. What lies in one of them is worth %2.</source>
            <translation>‏%1 ڈبے اور: مزید کچھ نہیں دینا۔ ایک ڈبے میں جو ہے اس کی قیمت %2 ہے۔</translation>
        </message>
        <message>
            <source>%1 boxes more: the till asks for %2 more.</source>
            <translation>‏%1 ڈبے اور: دکان پر %2 مزید دینے ہوں گے۔</translation>
        </message>
        <message>
            <source>%1 boxes more: the till asks for %2 more. What lies in one of them is worth %3.</source>
            <translation>‏%1 ڈبے اور: دکان پر %2 مزید دینے ہوں گے۔ ایک ڈبے میں جو ہے اس کی قیمت %3 ہے۔</translation>
        </message>
        <message>
            <source>%1 broken</source>
            <translation>ٹوٹا ہوا: %1</translation>
        </message>
        <message>
            <source>%1 counted %2</source>
            <translation>‏%1 کی گنتی: %2</translation>
        </message>
        <message>
            <source>%1 counted %2 %3 %4.</source>
            <translation>‏%4 %1 کی گنتی: %2 %3۔</translation>
        </message>
        <message>
            <source>%1 counted %2 %3.</source>
            <translation>‏%1 کی گنتی: %2 %3۔</translation>
        </message>
        <message>
            <source>%1 counted in %2 %3.</source>
            <translation>‏%1 نے گن کر شامل کیا: %2 %3۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 days</source>
            <translation>
                <numerusform>‏%1 دن</numerusform>
                <numerusform>‏%1 دن</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 dried out</source>
            <translation>سوکھا ہوا: %1</translation>
        </message>
        <message>
            <source>%1 evening</source>
            <translation>‏%1، شام</translation>
        </message>
        <message>
            <source>%1 from %2</source>
            <translation>‏%1 (%2)</translation>
        </message>
        <message>
            <source>%1 gone</source>
            <translation>کم: %1</translation>
        </message>
        <message>
            <source>%1 in all</source>
            <translation>کل %1</translation>
        </message>
        <message>
            <source>%1 in the box.</source>
            <translation>ڈبے میں %1۔</translation>
        </message>
        <message>
            <source>%1 in the week of %2.</source>
            <translation>‏%2 کے ہفتے میں %1۔</translation>
        </message>
        <message>
            <source>%1 in this box</source>
            <translation>اس ڈبے میں %1</translation>
        </message>
        <message>
            <source>%1 instead of %2.</source>
            <translation>‏%2 کی جگہ %1۔</translation>
        </message>
        <message>
            <source>%1 is asked.</source>
            <translation>سوال %1 سے ہے۔</translation>
        </message>
        <message>
            <source>%1 is in force since %2. A lid that says less is out of date: print it again.</source>
            <translation>‏%2 سے %1 لاگو ہے۔ جس ڈھکن پر اس سے کم لکھا ہو وہ پرانا ہے: دوبارہ چھاپیں۔</translation>
        </message>
        <message>
            <source>%1 is not in the crew any more. What came from there since was not taken in.</source>
            <translation>‏%1 اب ساتھیوں میں نہیں۔ اس کے بعد وہاں سے جو آیا وہ نہیں لیا گیا۔</translation>
        </message>
        <message>
            <source>%1 is under three and is here: no %2.</source>
            <translation>‏%1 کی عمر تین سال سے کم ہے اور وہ یہاں موجود ہے: %2 نہیں۔</translation>
        </message>
        <message>
            <source>%1 lives here: no %2 in this home at any time.</source>
            <translation>‏%1 کا گھر یہی ہے: اس گھر میں کسی وقت بھی %2 نہیں۔</translation>
        </message>
        <message>
            <source>%1 lost</source>
            <translation>گم: %1</translation>
        </message>
        <message>
            <source>%1 may put things in the mouth: no %2.</source>
            <translation>ممکن ہے %1 چیزیں منہ میں ڈالے: %2 نہیں۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 missing</source>
            <translation>
                <numerusform>‏%1 غائب</numerusform>
                <numerusform>‏%1 غائب</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 morning</source>
            <translation>‏%1، صبح</translation>
        </message>
        <message>
            <source>%1 needs the pair for the left hand. Put these back.</source>
            <translation>‏%1 کو بائیں ہاتھ والی قینچی چاہیے۔ یہ واپس رکھ دیں۔</translation>
        </message>
        <message>
            <source>%1 needs the pair for the right hand. Put these back.</source>
            <translation>‏%1 کو دائیں ہاتھ والی قینچی چاہیے۔ یہ واپس رکھ دیں۔</translation>
        </message>
        <message>
            <source>%1 noted %2 %3, on two phones.</source>
            <translation>‏%1 نے %3 دو فونوں پر لکھا: %2۔</translation>
        </message>
        <message>
            <source>%1 noted %2 %3.</source>
            <translation>‏%1 نے %3 لکھا: %2۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 notes wait on this phone</source>
            <translation>
                <numerusform>اس فون پر %1 نوٹ منتظر ہے</numerusform>
                <numerusform>اس فون پر %1 نوٹ منتظر ہیں</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of %2 in.</source>
            <translation>‏%2 میں سے %1 اندر ہیں۔</translation>
        </message>
        <message>
            <source>%1 on %2: %3</source>
            <translation>‏%1، %2 کو: %3</translation>
        </message>
        <message>
            <source>%1 or %2</source>
            <translation>‏%1 یا %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 pages of the catalogue cannot be read and are left out, %2 among them. All else is here.</source>
            <translation>
                <numerusform>فہرست کا %1 صفحہ پڑھا نہیں جا سکتا اور چھوڑ دیا گیا ہے، %2 اسی میں ہے۔ باقی سب یہاں ہے۔</numerusform>
                <numerusform>فہرست کے %1 صفحے پڑھے نہیں جا سکتے اور چھوڑ دیے گئے ہیں، %2 انہی میں ہے۔ باقی سب یہاں ہے۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces</source>
            <translation>
                <numerusform>‏%1 ٹکڑا</numerusform>
                <numerusform>‏%1 ٹکڑے</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 put %2 %3 in %4.</source>
            <translation>‏%1 نے %4 ڈبے میں رکھا: %2 %3۔</translation>
        </message>
        <message>
            <source>%1 said so of %4: %2, %3.</source>
            <translation>‏%4 کے بارے میں یہ %1 نے بتایا: %2، %3۔</translation>
        </message>
        <message>
            <source>%1 said so: %2, %3.</source>
            <translation>یہ %1 نے بتایا: %2، %3۔</translation>
        </message>
        <message>
            <source>%1 says: %2.</source>
            <translation>‏%1 کا جواب: %2۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 small pieces are missing.</source>
            <translation>
                <numerusform>‏%1 چھوٹا ٹکڑا غائب ہے۔</numerusform>
                <numerusform>‏%1 چھوٹے ٹکڑے غائب ہیں۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 small pieces are not found.</source>
            <translation>
                <numerusform>‏%1 چھوٹا ٹکڑا نہیں ملا۔</numerusform>
                <numerusform>‏%1 چھوٹے ٹکڑے نہیں ملے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 still in use</source>
            <translation>ابھی استعمال میں: %1</translation>
        </message>
        <message numerus="yes">
            <source>%1 things counted</source>
            <translation>
                <numerusform>گنی گئی چیزیں: %1</numerusform>
                <numerusform>گنی گئی چیزیں: %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 times %2 told us both.</source>
            <translation>
                <numerusform>‏%2 نے %1 بار دونوں بتائے۔</numerusform>
                <numerusform>‏%2 نے %1 بار دونوں بتائے۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 times an adult guessed both.</source>
            <translation>
                <numerusform>‏%1 بار کسی بڑے نے دونوں کا اندازہ لگایا۔</numerusform>
                <numerusform>‏%1 بار کسی بڑے نے دونوں کا اندازہ لگایا۔</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>‏%1 سے %2</translation>
        </message>
        <message>
            <source>%1 to be cleaned or replaced first</source>
            <translation>‏%1 پہلے صاف یا تبدیل ہو</translation>
        </message>
        <message>
            <source>%1 too: %2.</source>
            <translation>یہ بھی، %1: %2۔</translation>
        </message>
        <message>
            <source>%1 used up</source>
            <translation>ختم: %1</translation>
        </message>
        <message>
            <source>%1 uses a newer Lidlark. Bring this phone up to date to see what they shared.</source>
            <translation>‏%1 کے پاس نیا Lidlark ہے۔ ان کا بانٹا ہوا دیکھنے کے لیے اس فون کو تازہ کریں۔</translation>
        </message>
        <message numerus="yes">
            <source>%1 weeks</source>
            <translation>
                <numerusform>‏%1 ہفتہ</numerusform>
                <numerusform>‏%1 ہفتے</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 went out. %2 home.</source>
            <translation>‏%1 باہر گئے۔ %2 واپس۔</translation>
        </message>
        <message>
            <source>%1 wrote why: %2</source>
            <translation>‏%1 نے وجہ لکھی: %2</translation>
        </message>
        <message>
            <source>%1 × pack of %2, at %3</source>
            <translation>‏%1 × %2 کا پیکٹ، قیمت %3</translation>
        </message>
        <message>
            <source>%1's box</source>
            <translation>‏%1 کا ڈبا</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>%1, all home</source>
            <translation>‏%1، سب واپس</translation>
        </message>
        <message>
            <source>%1, not %2.</source>
            <translation>‏%1، %2 نہیں۔</translation>
        </message>
        <message>
            <source>%1, packs to buy: %2 instead of %3.</source>
            <translation>‏%1، خریدنے کے پیکٹ: %3 کی جگہ %2۔</translation>
        </message>
        <message>
            <source>%1, packs to buy: %2.</source>
            <translation>‏%1، خریدنے کے پیکٹ: %2۔</translation>
        </message>
        <message>
            <source>%1, says %2</source>
            <translation>‏%1، %2 کے مطابق</translation>
        </message>
        <message>
            <source>%1, says %2, %3.</source>
            <translation>‏%1، %2 کے مطابق، %3۔</translation>
        </message>
        <message>
            <source>%1.</source>
            <translation>‏%1۔</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>‏%1۔ %2</translation>
        </message>
        <message>
            <source>%1. %2, %3.</source>
            <translation>‏%1۔ %2، %3۔</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 counted</source>
            <translation>‏%1: گنتی %2</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. %4 are missing.</source>
            <translation>‏%1: گنے %2، ہونے چاہییں %3۔ %4 غائب ہیں۔</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. %4 more.</source>
            <translation>‏%1: گنے %2، ہونے چاہییں %3۔ %4 زیادہ۔</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. At least %4 missing.</source>
            <translation>‏%1: گنے %2، ہونے چاہییں %3۔ کم از کم %4 غائب۔</translation>
        </message>
        <message>
            <source>%1: %2 counted, %3 expected. One is missing.</source>
            <translation>‏%1: گنے %2، ہونے چاہییں %3۔ ایک غائب ہے۔</translation>
        </message>
        <message>
            <source>%1: %2 here, not %3.</source>
            <translation>‏%1: یہاں %2، %3 نہیں۔</translation>
        </message>
        <message>
            <source>%1: %2 in the week of %3.</source>
            <translation>‏%1: %3 کے ہفتے میں %2۔</translation>
        </message>
        <message>
            <source>%1: %2 instead of %3.</source>
            <translation>‏%1: %3 کی جگہ %2۔</translation>
        </message>
        <message>
            <source>%1: a pack costs 0 to %2 pence.</source>
            <translation>‏%1: ایک پیکٹ کی قیمت 0 سے %2 پینس تک ہوتی ہے۔</translation>
        </message>
        <message>
            <source>%1: a pack holds 1 to %2 pieces.</source>
            <translation>‏%1: ایک پیکٹ میں 1 سے %2 تک چیزیں ہوتی ہیں۔</translation>
        </message>
        <message>
            <source>%1: a second person looks it over first</source>
            <translation>‏%1: پہلے دوسرا شخص جانچے</translation>
        </message>
        <message>
            <source>%1: all back</source>
            <translation>‏%1: سب واپس</translation>
        </message>
        <message>
            <source>%1: asked for</source>
            <translation>‏%1: مانگا گیا</translation>
        </message>
        <message>
            <source>%1: asked for as written</source>
            <translation>‏%1: جیسا لکھا ہے ویسا مانگا گیا</translation>
        </message>
        <message>
            <source>%1: asked for easier</source>
            <translation>‏%1: آسان طریقہ مانگا گیا</translation>
        </message>
        <message>
            <source>%1: asked for harder</source>
            <translation>‏%1: مشکل طریقہ مانگا گیا</translation>
        </message>
        <message>
            <source>%1: asked for in no special way</source>
            <translation>‏%1: کوئی خاص طریقہ نہیں مانگا گیا</translation>
        </message>
        <message>
            <source>%1: asked for it again</source>
            <translation>‏%1: پھر مانگا</translation>
        </message>
        <message>
            <source>%1: at least one</source>
            <translation>‏%1: کم از کم ایک</translation>
        </message>
        <message>
            <source>%1: at most %2 packs to choose from. Take some out.</source>
            <translation>‏%1: چننے کے لیے زیادہ سے زیادہ %2 پیکٹ ہو سکتے ہیں۔ کچھ نکال دیں۔</translation>
        </message>
        <message>
            <source>%1: begun</source>
            <translation>‏%1: کھیل شروع</translation>
        </message>
        <message>
            <source>%1: below zero</source>
            <translation>‏%1: صفر سے کم</translation>
        </message>
        <message>
            <source>%1: cannot be washed</source>
            <translation>‏%1: دھل نہیں سکتا</translation>
        </message>
        <message>
            <source>%1: counted in</source>
            <translation>‏%1: گن کر شامل</translation>
        </message>
        <message>
            <source>%1: empty</source>
            <translation>‏%1: خالی</translation>
        </message>
        <message>
            <source>%1: five minutes to play?</source>
            <translation>‏%1: پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>%1: floor checked, not found</source>
            <translation>‏%1: فرش دیکھا، نہیں ملا</translation>
        </message>
        <message>
            <source>%1: found left open</source>
            <translation>‏%1: کھلا ملا</translation>
        </message>
        <message>
            <source>%1: found own way</source>
            <translation>‏%1: اپنا طریقہ نکالا</translation>
        </message>
        <message>
            <source>%1: has not come back</source>
            <translation>‏%1: واپس نہیں آیا</translation>
        </message>
        <message>
            <source>%1: holds what this home must avoid</source>
            <translation>‏%1: اس میں وہ ہے جس سے اس گھر کو بچنا ہے</translation>
        </message>
        <message>
            <source>%1: how things stand</source>
            <translation>‏%1: اب کیا حال ہے</translation>
        </message>
        <message>
            <source>%1: is for that child already</source>
            <translation>‏%1: پہلے سے اسی بچے کا ہے</translation>
        </message>
        <message>
            <source>%1: is not with a child</source>
            <translation>‏%1: کسی بچے کے پاس نہیں</translation>
        </message>
        <message>
            <source>%1: is replaced, not cleaned</source>
            <translation>‏%1: بدلا جاتا ہے، صاف نہیں ہوتا</translation>
        </message>
        <message>
            <source>%1: its price is in another currency than the build. Change the one or the other.</source>
            <translation>‏%1: اس کی قیمت باقی ڈبوں سے الگ کرنسی میں ہے۔ دونوں میں سے ایک بدل دیں۔</translation>
        </message>
        <message>
            <source>%1: keeps as long as its kind does</source>
            <translation>‏%1: اتنا چلتا ہے جتنی اس قسم کی چیز</translation>
        </message>
        <message>
            <source>%1: kept for %2</source>
            <translation>‏%1: رکھا گیا، دن: %2</translation>
        </message>
        <message>
            <source>%1: left free</source>
            <translation>‏%1: خالی چھوڑا</translation>
        </message>
        <message>
            <source>%1: listed twice among the items. Keep one.</source>
            <translation>‏%1: چیزوں کی فہرست میں دو بار ہے۔ ایک رہنے دیں۔</translation>
        </message>
        <message>
            <source>%1: looked over, good</source>
            <translation>‏%1: دیکھا گیا، ٹھیک</translation>
        </message>
        <message>
            <source>%1: made for the other hand</source>
            <translation>‏%1: دوسرے ہاتھ کے لیے بنی ہے</translation>
        </message>
        <message>
            <source>%1: more is needed than lies on the shelf, and no shop is named. Add a pack with its price.</source>
            <translation>‏%1: شیلف پر جتنا ہے اس سے زیادہ چاہیے، اور کوئی دکان نہیں لکھی۔ قیمت کے ساتھ ایک پیکٹ لکھیں۔</translation>
        </message>
        <message>
            <source>%1: more than 999</source>
            <translation>‏%1: ۹۹۹ سے زیادہ</translation>
        </message>
        <message>
            <source>%1: more than are out, or none</source>
            <translation>‏%1: جتنے باہر ہیں ان سے زیادہ، یا کوئی نہیں</translation>
        </message>
        <message>
            <source>%1: more than is missing, or none</source>
            <translation>‏%1: جتنے غائب ہیں ان سے زیادہ، یا کوئی نہیں</translation>
        </message>
        <message>
            <source>%1: more than the box held</source>
            <translation>‏%1: ڈبے میں جتنے تھے ان سے زیادہ</translation>
        </message>
        <message>
            <source>%1: named twice</source>
            <translation>‏%1: دو بار لکھا ہے</translation>
        </message>
        <message>
            <source>%1: need not leave the house</source>
            <translation>‏%1: گھر سے باہر جانے کی ضرورت نہیں</translation>
        </message>
        <message>
            <source>%1: needed help</source>
            <translation>‏%1: مدد چاہیے تھی</translation>
        </message>
        <message>
            <source>%1: nobody has said what it holds</source>
            <translation>‏%1: کسی نے نہیں بتایا اس میں کیا ہے</translation>
        </message>
        <message>
            <source>%1: nobody's yet</source>
            <translation>‏%1: ابھی کسی کا نہیں</translation>
        </message>
        <message numerus="yes">
            <source>%1: none in the last %2 weeks.</source>
            <translation>
                <numerusform>‏%1: پچھلے %2 ہفتے میں کوئی نہیں۔</numerusform>
                <numerusform>‏%1: پچھلے %2 ہفتوں میں کوئی نہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: none of the five steps</source>
            <translation>‏%1: پانچ درجوں میں سے کوئی نہیں</translation>
        </message>
        <message>
            <source>%1: not after the day it was agreed</source>
            <translation>‏%1: طے ہونے کے دن کے بعد نہیں</translation>
        </message>
        <message>
            <source>%1: not all of it is packed</source>
            <translation>‏%1: سب نہیں رکھا گیا</translation>
        </message>
        <message>
            <source>%1: not missing</source>
            <translation>‏%1: غائب نہیں</translation>
        </message>
        <message>
            <source>%1: not opened after all</source>
            <translation>‏%1: دراصل کھولا نہیں گیا</translation>
        </message>
        <message>
            <source>%1: not packed</source>
            <translation>‏%1: رکھا نہیں گیا</translation>
        </message>
        <message>
            <source>%1: nothing in it</source>
            <translation>‏%1: اس میں کچھ نہیں</translation>
        </message>
        <message>
            <source>%1: on its way</source>
            <translation>‏%1: راستے میں</translation>
        </message>
        <message>
            <source>%1: once opened, keeps days: %2</source>
            <translation>‏%1: کھلنے کے بعد جتنے دن چلتا ہے: %2</translation>
        </message>
        <message>
            <source>%1: one line of plain text only</source>
            <translation>‏%1: صرف سادہ متن کی ایک سطر</translation>
        </message>
        <message>
            <source>%1: open again</source>
            <translation>‏%1: منصوبے کے لیے پھر خالی</translation>
        </message>
        <message>
            <source>%1: opened %2</source>
            <translation>‏%1: %2 کو کھولا گیا</translation>
        </message>
        <message>
            <source>%1: opened today</source>
            <translation>‏%1: آج کھولا گیا</translation>
        </message>
        <message>
            <source>%1: other packs, as many.</source>
            <translation>‏%1: پیکٹ دوسرے، گنتی وہی۔</translation>
        </message>
        <message>
            <source>%1: our way kept</source>
            <translation>‏%1: ہمارا طریقہ رکھا گیا</translation>
        </message>
        <message>
            <source>%1: our way taken off</source>
            <translation>‏%1: ہمارا طریقہ ہٹایا گیا</translation>
        </message>
        <message>
            <source>%1: out of the house</source>
            <translation>‏%1: گھر سے باہر</translation>
        </message>
        <message>
            <source>%1: packed</source>
            <translation>‏%1: ڈبے میں رکھا</translation>
        </message>
        <message>
            <source>%1: pieces in stock are 0 or more. Count the shelf again.</source>
            <translation>‏%1: شیلف پر 0 یا زیادہ چیزیں ہو سکتی ہیں۔ دوبارہ گنیں۔</translation>
        </message>
        <message>
            <source>%1: played as written</source>
            <translation>‏%1: جیسا لکھا ہے ویسے کھیلا</translation>
        </message>
        <message>
            <source>%1: played easier</source>
            <translation>‏%1: آسان کر کے کھیلا</translation>
        </message>
        <message>
            <source>%1: played harder</source>
            <translation>‏%1: مشکل کر کے کھیلا</translation>
        </message>
        <message>
            <source>%1: put back, not all as it was</source>
            <translation>‏%1: واپس رکھا، سب پہلے جیسا نہیں</translation>
        </message>
        <message>
            <source>%1: question answered</source>
            <translation>‏%1: سوال کا جواب دیا گیا</translation>
        </message>
        <message>
            <source>%1: replaced</source>
            <translation>‏%1: بدل دیا</translation>
        </message>
        <message>
            <source>%1: request seen</source>
            <translation>‏%1: مانگا ہوا دیکھ لیا</translation>
        </message>
        <message>
            <source>%1: say for which hand</source>
            <translation>‏%1: بتائیں کس ہاتھ کے لیے</translation>
        </message>
        <message>
            <source>%1: say why it differs</source>
            <translation>‏%1: بتائیں یہ مختلف کیوں ہے</translation>
        </message>
        <message>
            <source>%1: some pieces are still missing</source>
            <translation>‏%1: کچھ ٹکڑے اب بھی غائب ہیں</translation>
        </message>
        <message>
            <source>%1: somebody else looks it over</source>
            <translation>‏%1: کوئی اور جانچے</translation>
        </message>
        <message>
            <source>%1: something has to come out first</source>
            <translation>‏%1: پہلے کچھ نکالنا ہے</translation>
        </message>
        <message>
            <source>%1: something is there already</source>
            <translation>‏%1: وہاں پہلے سے کچھ موجود ہے</translation>
        </message>
        <message>
            <source>%1: still to come</source>
            <translation>‏%1: ابھی آنا ہے</translation>
        </message>
        <message>
            <source>%1: still with a child</source>
            <translation>‏%1: ابھی ایک بچے کے پاس ہے</translation>
        </message>
        <message>
            <source>%1: stopped early</source>
            <translation>‏%1: پہلے روک دیا</translation>
        </message>
        <message>
            <source>%1: the same as another step</source>
            <translation>‏%1: کسی اور درجے جیسا ہی</translation>
        </message>
        <message>
            <source>%1: there is no price yet. Look it up and add it.</source>
            <translation>‏%1: ابھی قیمت نہیں لکھی۔ معلوم کر کے لکھ دیں۔</translation>
        </message>
        <message>
            <source>%1: too long</source>
            <translation>‏%1: بہت لمبا</translation>
        </message>
        <message>
            <source>%1: used no more</source>
            <translation>‏%1: اب استعمال میں نہیں</translation>
        </message>
        <message>
            <source>%1: was handed over as this build</source>
            <translation>‏%1: اسی مجموعے میں دیا جا چکا ہے</translation>
        </message>
        <message>
            <source>%1: was in a mouth</source>
            <translation>‏%1: منہ میں گیا تھا</translation>
        </message>
        <message>
            <source>%1: washed</source>
            <translation>‏%1: دھو لیا</translation>
        </message>
        <message>
            <source>%1: written in two ways</source>
            <translation>‏%1: دو طرح لکھا ہے</translation>
        </message>
        <message>
            <source>1 day</source>
            <translation>۱ دن</translation>
        </message>
        <message>
            <source>1 piece</source>
            <translation>۱ ٹکڑا</translation>
        </message>
        <message>
            <source>16 CFR 1500.19(b)</source>
            <translation>16 CFR 1500.19(b)</translation>
        </message>
        <message>
            <source>A bag has an opening, a sheet two edges: measure one of these.</source>
            <translation>تھیلی کا منہ ہوتا ہے، چادر کے دو کنارے: ان میں سے ایک ناپیں۔</translation>
        </message>
        <message>
            <source>A ball has a size: it cannot be soft.</source>
            <translation>گیند کا ناپ ہوتا ہے: یہ نرم نہیں ہو سکتی۔</translation>
        </message>
        <message>
            <source>A battery</source>
            <translation>بیٹری</translation>
        </message>
        <message>
            <source>A blunt table fork, sitting down.</source>
            <translation>کھانے کا کند کانٹا، بیٹھ کر۔</translation>
        </message>
        <message>
            <source>A box has no code. Give it one that no other box has.</source>
            <translation>ایک ڈبے کا کوئی کوڈ نہیں۔ اسے ایسا کوڈ دیں جو کسی اور ڈبے کا نہ ہو۔</translation>
        </message>
        <message>
            <source>A build holds at most %1 boxes. Make two of it.</source>
            <translation>ایک ساتھ زیادہ سے زیادہ %1 ڈبے بن سکتے ہیں۔ انہیں دو حصوں میں بانٹ دیں۔</translation>
        </message>
        <message>
            <source>A build knows at most %1 kinds of item. Take out those it does not need.</source>
            <translation>زیادہ سے زیادہ %1 قسم کی چیزیں ہو سکتی ہیں۔ جو نہیں چاہییں انہیں نکال دیں۔</translation>
        </message>
        <message>
            <source>A caution of what it is played with is missing.</source>
            <translation>جس چیز سے کھیلا جاتا ہے اُس کی ایک احتیاط درج نہیں۔</translation>
        </message>
        <message>
            <source>A clinic writes a record of its own about its work with a child. The law says for how long it must keep that, so it stays there when you erase yours.</source>
            <translation>کلینک بچے کے ساتھ اپنے کام کا اپنا ریکارڈ لکھتا ہے۔ قانون بتاتا ہے کہ اسے کتنے عرصے رکھنا لازم ہے، اس لیے آپ اپنا ریکارڈ مٹائیں تو بھی وہ وہاں رہتا ہے۔</translation>
        </message>
        <message>
            <source>A clinician has checked %1 of the %2 activities; the others were written with care and wait for it. Follow your local rules and your therapist.</source>
            <translation>طبی ماہر نے %2 میں سے %1 سرگرمیاں جانچ لی ہیں؛ باقی احتیاط سے لکھی گئی ہیں اور اس کے انتظار میں ہیں۔ اپنے علاقے کے قاعدوں اور اپنے تھراپسٹ کی بات مانیں۔</translation>
        </message>
        <message>
            <source>A code has nine words; here are more.</source>
            <translation>کوڈ میں نو لفظ ہوتے ہیں؛ یہاں زیادہ ہیں۔</translation>
        </message>
        <message numerus="yes">
            <source>A code has nine words; here is only %1.</source>
            <translation>
                <numerusform>کوڈ میں نو لفظ ہوتے ہیں؛ یہاں صرف %1 ہے۔</numerusform>
                <numerusform>کوڈ میں نو لفظ ہوتے ہیں؛ یہاں صرف %1 ہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>A coin may be a button battery: treat it as one.</source>
            <translation>سکہ بٹن بیٹری ہو سکتا ہے: اسے بیٹری ہی سمجھیں۔</translation>
        </message>
        <message>
            <source>A currency is three capital letters, such as GBP.</source>
            <translation>کرنسی تین بڑے حرف ہوتی ہے، جیسے GBP۔</translation>
        </message>
        <message>
            <source>A file there cannot be given another name: something in front of the server is in the way. Choose another place, or ask whoever looks after it.</source>
            <translation>وہاں فائل کا نام نہیں بدلا جا سکتا: سرور کے آگے کوئی چیز رکاوٹ ہے۔ کوئی اور جگہ چنیں، یا جو اسے دیکھتا ہے اس سے پوچھیں۔</translation>
        </message>
        <message>
            <source>A magnet</source>
            <translation>مقناطیس</translation>
        </message>
        <message>
            <source>A magnet or a button battery: go to hospital without waiting.</source>
            <translation>مقناطیس یا بٹن بیٹری: انتظار کیے بغیر ہسپتال جائیں۔</translation>
        </message>
        <message>
            <source>A name or a password stands in the address and below it as well. Leave one of them out.</source>
            <translation>نام یا پاس ورڈ پتے میں بھی ہے اور نیچے بھی۔ ایک جگہ سے ہٹا دیں۔</translation>
        </message>
        <message>
            <source>A newer Lidlark made this file. Bring this phone up to date, then open it again.</source>
            <translation>یہ فائل Lidlark کے نئے ورژن نے بنائی۔ اس فون کو تازہ کریں، پھر دوبارہ کھولیں۔</translation>
        </message>
        <message>
            <source>A newer Lidlark wrote one family's file: %1. Bring Lidlark up to date on this phone to open it. The others are as they were.</source>
            <translation>ایک خاندان کی فائل Lidlark کے نئے ورژن نے لکھی ہے: %1۔ اسے کھولنے کے لیے اس فون پر Lidlark کو تازہ کریں۔ باقی ویسی ہی ہیں جیسی تھیں۔</translation>
        </message>
        <message>
            <source>A newer Lidlark wrote this store. It was left as it is. Bring Lidlark up to date on this phone, then open it again.</source>
            <translation>یہ ذخیرہ Lidlark کے نئے ورژن نے لکھا ہے۔ اسے ویسا ہی چھوڑ دیا گیا۔ اس فون پر Lidlark کو تازہ کریں، پھر دوبارہ کھولیں۔</translation>
        </message>
        <message>
            <source>A note of your own kept</source>
            <translation>آپ کا اپنا نوٹ رکھا گیا</translation>
        </message>
        <message>
            <source>A note of your own may go to the therapist</source>
            <translation>آپ کا اپنا نوٹ تھراپسٹ کو جا سکتا ہے</translation>
        </message>
        <message>
            <source>A note of your own taken off</source>
            <translation>آپ کا اپنا نوٹ ہٹایا گیا</translation>
        </message>
        <message>
            <source>A part of what %1 shared is damaged, or was put in its place by somebody else. It was not taken in.</source>
            <translation>‏%1 نے جو بانٹا اس کا ایک حصہ خراب ہے، یا کسی اور نے اس کی جگہ رکھا۔ وہ نہیں لیا گیا۔</translation>
        </message>
        <message>
            <source>A piece of balloon may still lie about. Look first, then say so.</source>
            <translation>غبارے کا ٹکڑا اب بھی پڑا ہو سکتا ہے۔ پہلے دیکھیں، پھر بتائیں۔</translation>
        </message>
        <message>
            <source>A small child lives here: %1 need a box kept up high. Say so on the home sheet.</source>
            <translation>یہاں چھوٹا بچہ رہتا ہے: ڈبا اونچی جگہ رکھنا لازم ہے (%1)۔ گھر کے پرچے پر بتائیں۔</translation>
        </message>
        <message>
            <source>A small child lives here: %1 only as your therapist has noted, for example asleep or out. Ask your therapist.</source>
            <translation>یہاں چھوٹا بچہ رہتا ہے: %1 صرف ویسے جیسے آپ کے تھراپسٹ نے لکھا ہے، مثلاً جب وہ سو رہا ہو یا باہر ہو۔ اپنے تھراپسٹ سے پوچھیں۔</translation>
        </message>
        <message>
            <source>A small child may live here: no %1 in this home.</source>
            <translation>شاید یہاں چھوٹا بچہ رہتا ہو: اس گھر میں %1 نہیں۔</translation>
        </message>
        <message>
            <source>A small piece may still lie on the floor. Look first, then say so.</source>
            <translation>چھوٹا ٹکڑا اب بھی فرش پر ہو سکتا ہے۔ پہلے دیکھیں، پھر بتائیں۔</translation>
        </message>
        <message>
            <source>A small skill</source>
            <translation>ایک چھوٹا ہنر</translation>
        </message>
        <message>
            <source>Added: %1 (%2).</source>
            <translation>اضافہ: %1 (%2)۔</translation>
        </message>
        <message>
            <source>After bath: five minutes to play?</source>
            <translation>نہانے کے بعد: پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>After school: five minutes to play?</source>
            <translation>اسکول کے بعد: پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>After tea: five minutes to play?</source>
            <translation>شام کے کھانے کے بعد: پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>After the count</source>
            <translation>گنتی کے بعد</translation>
        </message>
        <message>
            <source>Agreed on %1. Looked at again on %2.</source>
            <translation>‏%1 کو طے ہوا۔ %2 کو دوبارہ دیکھیں گے۔</translation>
        </message>
        <message>
            <source>Agreed together on %1: %2</source>
            <translation>‏%1 کو مل کر طے ہوا: %2</translation>
        </message>
        <message>
            <source>All back</source>
            <translation>سب واپس</translation>
        </message>
        <message>
            <source>All in. A second person looks it over: %1 of %2.</source>
            <translation>سب اندر ہے۔ دوسرا شخص جانچتا ہے: %2 میں سے %1۔</translation>
        </message>
        <message>
            <source>All it needs is here</source>
            <translation>جو چاہیے سب یہاں ہے</translation>
        </message>
        <message>
            <source>All of it is taken out.</source>
            <translation>سب نکال لیا گیا۔</translation>
        </message>
        <message>
            <source>All of these need a table.</source>
            <translation>ان سب کو میز چاہیے۔</translation>
        </message>
        <message>
            <source>All that this phone held about %1 on %2.</source>
            <translation>‏%2 کو اس فون پر %1 کے بارے میں جو کچھ تھا، وہ سب۔</translation>
        </message>
        <message>
            <source>An address begins with https. Copy the one for WebDAV.</source>
            <translation>پتا https سے شروع ہوتا ہے۔ WebDAV والا پتا نقل کریں۔</translation>
        </message>
        <message>
            <source>An adult sits right beside for what this is played with.</source>
            <translation>ان چیزوں کے ساتھ ایک بڑا بالکل پاس بیٹھتا ہے۔</translation>
        </message>
        <message>
            <source>And others.</source>
            <translation>اور بھی۔</translation>
        </message>
        <message>
            <source>Another goal takes its place</source>
            <translation>اس کی جگہ دوسرا مقصد ہے</translation>
        </message>
        <message>
            <source>Another number was packed. Count it again.</source>
            <translation>دوسری تعداد رکھی گئی تھی۔ دوبارہ گنیں۔</translation>
        </message>
        <message>
            <source>Another phone has used this code. Ask for a new one.</source>
            <translation>یہ کوڈ کسی اور فون نے استعمال کر لیا ہے۔ نیا کوڈ مانگیں۔</translation>
        </message>
        <message>
            <source>Another phone writes under the name of this one: one of them is a copy. This one shares nothing until somebody of the crew lets it in again.</source>
            <translation>کوئی اور فون اس کے نام سے لکھتا ہے: ان میں سے ایک نقل ہے۔ جب تک کوئی ساتھی اسے پھر اندر نہ آنے دے، یہ کچھ نہیں بانٹتا۔</translation>
        </message>
        <message>
            <source>Another program is using one family's file: %1. Close it, then open Lidlark again. The others are as they were.</source>
            <translation>ایک خاندان کی فائل کوئی اور پروگرام استعمال کر رہا ہے: %1۔ وہ پروگرام بند کریں، پھر Lidlark دوبارہ کھولیں۔ باقی ویسی ہی ہیں جیسی تھیں۔</translation>
        </message>
        <message>
            <source>Another program is using this store. Close it, then try again. Nothing was changed.</source>
            <translation>کوئی اور پروگرام یہ ذخیرہ استعمال کر رہا ہے۔ اسے بند کریں، پھر دوبارہ کوشش کریں۔ کچھ نہیں بدلا۔</translation>
        </message>
        <message>
            <source>Anything else about the box</source>
            <translation>ڈبے کے بارے میں کوئی اور بات</translation>
        </message>
        <message>
            <source>April</source>
            <translation>اپریل</translation>
        </message>
        <message>
            <source>Arm's reach</source>
            <translation>ایک ہاتھ کی دوری</translation>
        </message>
        <message>
            <source>As designed.</source>
            <translation>نمونے کے مطابق۔</translation>
        </message>
        <message>
            <source>Ask about this at the next visit</source>
            <translation>اگلی ملاقات میں یہ پوچھنا ہے</translation>
        </message>
        <message>
            <source>Ask or sign first. Stop when your child pulls away.</source>
            <translation>پہلے پوچھیں یا اشارہ کریں۔ بچہ پیچھے ہٹے تو رکیں۔</translation>
        </message>
        <message>
            <source>Ask the clinic for a copy of it, or to put something in it right.</source>
            <translation>اس کی نقل کے لیے، یا اس میں کچھ درست کرانے کے لیے، کلینک سے کہیں۔</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>مانگا گیا</translation>
        </message>
        <message>
            <source>Asked for it again</source>
            <translation>پھر مانگا</translation>
        </message>
        <message>
            <source>Asked for: %1.</source>
            <translation>مانگا گیا: %1۔</translation>
        </message>
        <message>
            <source>At home, latex may also be in balloons, rubber gloves, some sticky tapes and soft squeezy toys. Ask of each stretchy thing: is it latex-free?</source>
            <translation>گھر میں لیٹکس غباروں، ربڑ کے دستانوں، بعض چپکنے والی ٹیپوں اور نرم دبنے والے کھلونوں میں بھی ہو سکتا ہے۔ ہر کھنچنے والی چیز کے بارے میں پوچھیں: کیا یہ لیٹکس کے بغیر ہے؟</translation>
        </message>
        <message>
            <source>At home, wheat may also be in bought dough, flour paste, papier mache and pasta for play.</source>
            <translation>گھر میں گندم خریدے ہوئے کھیل کے آٹے، آٹے کی لئی، کاغذ کی لگدی اور کھیل کے پاستا میں بھی ہو سکتی ہے۔</translation>
        </message>
        <message>
            <source>At most five breaths or puffs, then rest. Stop if dizzy.</source>
            <translation>زیادہ سے زیادہ پانچ سانس یا پھونکیں، پھر آرام۔ چکر آئیں تو رکیں۔</translation>
        </message>
        <message>
            <source>At most ten things are played with.</source>
            <translation>کھیل میں زیادہ سے زیادہ دس چیزیں۔</translation>
        </message>
        <message>
            <source>At most two more things that it is for, none of them twice.</source>
            <translation>زیادہ سے زیادہ دو اور مقصد، کوئی دو بار نہیں۔</translation>
        </message>
        <message>
            <source>August</source>
            <translation>اگست</translation>
        </message>
        <message>
            <source>Awaiting confirmation</source>
            <translation>تصدیق باقی</translation>
        </message>
        <message>
            <source>Away from home</source>
            <translation>گھر سے باہر</translation>
        </message>
        <message>
            <source>Away from steady: %1.</source>
            <translation>سیدھی اڑان سے دور: %1۔</translation>
        </message>
        <message>
            <source>Ball: %1 mm across.</source>
            <translation>گیند: چوڑائی %1 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Balloon</source>
            <translation>غبارہ</translation>
        </message>
        <message>
            <source>Because of %1: ask your therapist first.</source>
            <translation>پہلے اپنے تھراپسٹ سے پوچھیں۔ وجہ: %1۔</translation>
        </message>
        <message>
            <source>Because somebody puts things in the mouth.</source>
            <translation>کیونکہ کوئی چیزیں منہ میں ڈالتا ہے۔</translation>
        </message>
        <message>
            <source>Before another child has it, clean: %1.</source>
            <translation>دوسرے بچے کو دینے سے پہلے صاف کریں: %1۔</translation>
        </message>
        <message>
            <source>Before another child has it, clean: %1. Replace: %2.</source>
            <translation>دوسرے بچے کو دینے سے پہلے صاف کریں: %1۔ بدلیں: %2۔</translation>
        </message>
        <message>
            <source>Before another child has it, replace: %1.</source>
            <translation>دوسرے بچے کو دینے سے پہلے بدلیں: %1۔</translation>
        </message>
        <message>
            <source>Before bed: five minutes to play?</source>
            <translation>سونے سے پہلے: پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>Before the count</source>
            <translation>گنتی سے پہلے</translation>
        </message>
        <message>
            <source>Better at another time of day</source>
            <translation>دن کے کسی اور وقت بہتر</translation>
        </message>
        <message>
            <source>Better in a quieter place</source>
            <translation>زیادہ خاموش جگہ پر بہتر</translation>
        </message>
        <message>
            <source>Block: %1 by %2 by %3 mm.</source>
            <translation>بلاک: %1 ضرب %2 ضرب %3 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Box %1</source>
            <translation>ڈبا %1</translation>
        </message>
        <message>
            <source>Box %1 holds %2, which is not among the items. Add it there first.</source>
            <translation>ڈبے %1 میں %2 ہے، جو چیزوں کی فہرست میں نہیں۔ پہلے اسے وہاں لکھیں۔</translation>
        </message>
        <message>
            <source>Box %1 lists %2 twice. Keep one line.</source>
            <translation>ڈبے %1 میں %2 دو بار لکھا ہے۔ ایک سطر رہنے دیں۔</translation>
        </message>
        <message>
            <source>Box %1, %2: 1 to %3 pieces.</source>
            <translation>ڈبہ %1، %2: 1 سے %3 تک۔</translation>
        </message>
        <message>
            <source>Box: %1</source>
            <translation>ڈبا: %1</translation>
        </message>
        <message>
            <source>Boxes</source>
            <translation>ڈبے</translation>
        </message>
        <message>
            <source>Boxes that wait: %1. As asked for up to %2.</source>
            <translation>منتظر ڈبے: %1۔ %2 تک کی درخواستیں۔</translation>
        </message>
        <message>
            <source>Boxes with lot %1: %2. Ask for each of them back, or for the thing.</source>
            <translation>لاٹ %1 والے ڈبے: %2۔ ہر ایک کو، یا وہ چیز، واپس مانگیں۔</translation>
        </message>
        <message>
            <source>Boxes: %1</source>
            <translation>ڈبے: %1</translation>
        </message>
        <message>
            <source>Breath</source>
            <translation>سانس</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>ڈبوں کا حساب</translation>
        </message>
        <message>
            <source>Busy can be happy. Start beside, use few words, go slower than feels natural.</source>
            <translation>ہلچل خوشی بھی ہو سکتی ہے۔ پاس سے شروع کریں، کم لفظ بولیں، جتنا فطری لگے اس سے آہستہ چلیں۔</translation>
        </message>
        <message>
            <source>By a list of their own</source>
            <translation>اپنی الگ فہرست سے</translation>
        </message>
        <message>
            <source>By its measures: %1.</source>
            <translation>پیمائش سے: %1۔</translation>
        </message>
        <message>
            <source>Call %1</source>
            <translation>‏%1 پر فون کریں</translation>
        </message>
        <message>
            <source>Call the emergency number or the poison line now, even if your child seems well.</source>
            <translation>ہنگامی نمبر یا زہر کی ہیلپ لائن پر ابھی فون کریں، چاہے بچہ ٹھیک لگے۔</translation>
        </message>
        <message>
            <source>Call the poison line, %1</source>
            <translation>زہر کی ہیلپ لائن پر فون کریں، %1</translation>
        </message>
        <message>
            <source>Call your local emergency number.</source>
            <translation>اپنے علاقے کے ہنگامی نمبر پر فون کریں۔</translation>
        </message>
        <message>
            <source>Call your local emergency number: %1.</source>
            <translation>اپنے علاقے کے ہنگامی نمبر پر فون کریں: %1۔</translation>
        </message>
        <message>
            <source>Came back from %1: %2.</source>
            <translation>‏%1 سے واپس آیا: %2۔</translation>
        </message>
        <message>
            <source>Can stick over a small child's nose and mouth: no %1 near an under-three.</source>
            <translation>چھوٹے بچے کی ناک اور منہ پر چپک سکتا ہے: تین سال سے چھوٹے کے پاس %1 نہیں۔</translation>
        </message>
        <message>
            <source>Cannot cough, cry, speak or breathe, or will not wake: that is an emergency. Call now.</source>
            <translation>کھانس، رو یا بول نہیں سکتا، سانس نہیں لے سکتا، یا جاگتا نہیں: یہ ہنگامی حالت ہے۔ ابھی فون کریں۔</translation>
        </message>
        <message>
            <source>Card %1 of %2</source>
            <translation>کارڈ %1، کل %2</translation>
        </message>
        <message>
            <source>Check the handful: a button battery can look like a coin. Count out and back.</source>
            <translation>مٹھی بھر سکے دیکھ لیں: بٹن بیٹری سکے جیسی لگ سکتی ہے۔ گن کر نکالیں اور گن کر واپس رکھیں۔</translation>
        </message>
        <message>
            <source>Choose a day to look at it again.</source>
            <translation>وہ دن چنیں جب اسے دوبارہ دیکھا جائے۔</translation>
        </message>
        <message>
            <source>Choose how it is played: at least one way to sit, and nobody stands with what is sharp or in a mouth.</source>
            <translation>چنیں کہ کیسے کھیلا جائے: بیٹھنے کا کم از کم ایک طریقہ، اور نوکیلی یا منہ میں رکھی چیز کے ساتھ کوئی کھڑا نہ ہو۔</translation>
        </message>
        <message>
            <source>Choose one or two things that it is for.</source>
            <translation>ایک یا دو مقصد چنیں۔</translation>
        </message>
        <message>
            <source>Choose the step that is how it is today.</source>
            <translation>وہ درجہ چنیں جو آج کی حالت ہے۔</translation>
        </message>
        <message>
            <source>Clean</source>
            <translation>صاف کریں</translation>
        </message>
        <message>
            <source>Clear floor</source>
            <translation>خالی فرش</translation>
        </message>
        <message>
            <source>Clear the floor first.</source>
            <translation>پہلے فرش خالی کریں۔</translation>
        </message>
        <message>
            <source>Cling film</source>
            <translation>لپیٹنے والی پلاسٹک</translation>
        </message>
        <message>
            <source>Cloth</source>
            <translation>کپڑا</translation>
        </message>
        <message>
            <source>Clouds</source>
            <translation>بادل</translation>
        </message>
        <message>
            <source>Clouds in the way. That's fine.</source>
            <translation>راستے میں بادل۔ یہ بھی ٹھیک ہے۔</translation>
        </message>
        <message>
            <source>Coins</source>
            <translation>سکے</translation>
        </message>
        <message>
            <source>Comes off: %1.</source>
            <translation>الگ ہو جاتا ہے: %1۔</translation>
        </message>
        <message>
            <source>Complete, by what was noted.</source>
            <translation>جو لکھا گیا اس کے مطابق پورا ہے۔</translation>
        </message>
        <message>
            <source>Cord</source>
            <translation>ڈوری</translation>
        </message>
        <message>
            <source>Cord: %1 mm long, %2 mm thick.</source>
            <translation>ڈوری: %1 ملی میٹر لمبی، %2 ملی میٹر موٹی۔</translation>
        </message>
        <message>
            <source>Coughing hard? Let them go on coughing, and stay with them.</source>
            <translation>زور سے کھانس رہا ہے؟ کھانسنے دیں، اور ساتھ رہیں۔</translation>
        </message>
        <message>
            <source>Count everything home. The lid comes last.</source>
            <translation>سب کچھ گن کر واپس رکھیں۔ ڈھکن آخر میں۔</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>گنا گیا</translation>
        </message>
        <message>
            <source>Counted in</source>
            <translation>گن کر شامل</translation>
        </message>
        <message>
            <source>Days are written as year, month, day. In a table, words that begin with =, +, - or @ have an apostrophe before them, so that no spreadsheet takes them for a sum.</source>
            <translation>تاریخیں سال، مہینہ، دن کی ترتیب میں ہیں۔ جدول میں جو لفظ =، +، - یا @ سے شروع ہوں ان سے پہلے ’ لگا ہے، تاکہ کوئی اسپریڈ شیٹ انہیں حساب نہ سمجھے۔</translation>
        </message>
        <message>
            <source>December</source>
            <translation>دسمبر</translation>
        </message>
        <message>
            <source>Disc: %1 mm across, %2 mm thick.</source>
            <translation>ٹکیا: چوڑائی %1 ملی میٹر، موٹائی %2 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Disinfect it as your local rules say. Let it dry in the air.</source>
            <translation>اپنے علاقے کے قاعدوں کے مطابق جراثیم سے پاک کریں۔ ہوا میں سوکھنے دیں۔</translation>
        </message>
        <message>
            <source>Do not feel about in the mouth.</source>
            <translation>منہ میں انگلی ڈال کر نہ ٹٹولیں۔</translation>
        </message>
        <message>
            <source>Dough</source>
            <translation>آٹا</translation>
        </message>
        <message>
            <source>Dough is for hands, not for mouths.</source>
            <translation>آٹا ہاتھوں کے لیے ہے، منہ کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>EN 71-1</source>
            <translation>‏EN 71-1</translation>
        </message>
        <message numerus="yes">
            <source>Each evening left open takes %1 days of its time.</source>
            <translation>
                <numerusform>ہر کھلی چھوڑی شام اس کا %1 دن کم کرتی ہے۔</numerusform>
                <numerusform>ہر کھلی چھوڑی شام اس کے %1 دن کم کرتی ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Each evening left open takes one day of its time.</source>
            <translation>ہر کھلی چھوڑی شام اس کا ایک دن کم کرتی ہے۔</translation>
        </message>
        <message>
            <source>Each line changes something else.</source>
            <translation>ہر سطر کوئی اور چیز بدلتی ہے۔</translation>
        </message>
        <message>
            <source>Each piece counts its share of the price of its pack. Spares and what is left over are not in it: nobody pays these sums, and they do not add up to the one above.</source>
            <translation>ہر ٹکڑا اپنے پیکٹ کی قیمت کے حصے کے برابر گنا گیا ہے۔ فالتو اور بچا ہوا اس میں نہیں: یہ رقمیں کوئی ادا نہیں کرتا، اور ان کا جوڑ اوپر والی رقم نہیں بنتا۔</translation>
        </message>
        <message>
            <source>Each step but one needs a drawing of its own.</source>
            <translation>ایک کے سوا ہر قدم کو اپنی تصویر چاہیے۔</translation>
        </message>
        <message>
            <source>Easy to start with</source>
            <translation>شروع کرنے میں آسان</translation>
        </message>
        <message>
            <source>Egg shape: %1 by %2 by %3 mm.</source>
            <translation>انڈے کی شکل: %1 ضرب %2 ضرب %3 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Essential oil</source>
            <translation>خوشبودار تیل</translation>
        </message>
        <message>
            <source>Every kite does all of these.</source>
            <translation>ہر پتنگ یہ سب کرتی ہے۔</translation>
        </message>
        <message>
            <source>Every part that comes off needs a name.</source>
            <translation>ہر الگ ہونے والے حصے کا نام چاہیے۔</translation>
        </message>
        <message>
            <source>Every step needs words.</source>
            <translation>ہر قدم کے لیے الفاظ چاہئیں۔</translation>
        </message>
        <message>
            <source>Everything in it was counted on %1 or later.</source>
            <translation>سب کچھ %1 کو یا اس کے بعد گنا گیا۔</translation>
        </message>
        <message>
            <source>Everything shows all there is, and what each one needs.</source>
            <translation>“سب کچھ” میں سب سرگرمیاں ہیں، اور ہر ایک کو کیا چاہیے۔</translation>
        </message>
        <message>
            <source>Family or carer</source>
            <translation>خاندان یا دیکھ بھال کرنے والے</translation>
        </message>
        <message>
            <source>February</source>
            <translation>فروری</translation>
        </message>
        <message>
            <source>Feel the rim first, and tape it.</source>
            <translation>پہلے کنارہ چھوئیں، اور ٹیپ لگائیں۔</translation>
        </message>
        <message>
            <source>Film this large goes into no box, unless it is 0.038 mm thick or full of holes, and without a string to pull it shut.</source>
            <translation>اتنی بڑی پلاسٹک کسی ڈبے میں نہیں جاتی، جب تک 0.038 ملی میٹر موٹی یا سوراخوں سے بھری نہ ہو، اور بند کرنے کی ڈوری کے بغیر۔</translation>
        </message>
        <message>
            <source>Fine. You can offer it again another day.</source>
            <translation>ٹھیک ہے۔ آپ کسی اور دن پھر دکھا سکتے ہیں۔</translation>
        </message>
        <message>
            <source>First count the %1 home: %2 of %3.</source>
            <translation>پہلے گن کر واپس رکھیں: %1، %3 میں سے %2۔</translation>
        </message>
        <message>
            <source>First look at each child's hands and mouth.</source>
            <translation>پہلے ہر بچے کے ہاتھ اور منہ دیکھیں۔</translation>
        </message>
        <message>
            <source>Five minutes to play?</source>
            <translation>پانچ منٹ کھیلیں؟</translation>
        </message>
        <message>
            <source>Floor checked, not found</source>
            <translation>فرش دیکھا، نہیں ملا</translation>
        </message>
        <message>
            <source>Flying steady</source>
            <translation>سیدھی اڑتی</translation>
        </message>
        <message>
            <source>Flying steady. Comfy and ready.</source>
            <translation>سیدھی اڑتی۔ آرام سے اور تیار۔</translation>
        </message>
        <message>
            <source>Foam</source>
            <translation>جھاگ</translation>
        </message>
        <message>
            <source>Foil</source>
            <translation>فوائل</translation>
        </message>
        <message>
            <source>Fold sharp edges in. Collect every scrap.</source>
            <translation>تیز کنارے اندر موڑیں۔ ہر کترن اٹھائیں۔</translation>
        </message>
        <message>
            <source>Follow your child's idea if it is better than ours.</source>
            <translation>بچے کا خیال ہمارے خیال سے بہتر ہو تو اسی پر چلیں۔</translation>
        </message>
        <message>
            <source>Follow your local rules and your therapist.</source>
            <translation>اپنے علاقے کے قاعدوں اور اپنے تھراپسٹ کی بات مانیں۔</translation>
        </message>
        <message>
            <source>Food</source>
            <translation>کھانا</translation>
        </message>
        <message>
            <source>Food traces</source>
            <translation>کھانے کے ذرات</translation>
        </message>
        <message>
            <source>For %1</source>
            <translation>‏%1 کے لیے</translation>
        </message>
        <message>
            <source>For %1, with everybody of this home in the room. Made on %2. Print it again when anything at home changes.</source>
            <translation>‏%1 کے لیے، جب اس گھر کے سب لوگ کمرے میں ہوں۔ %2 کو بنائی گئی۔ گھر میں کچھ بدلے تو دوبارہ چھاپیں۔</translation>
        </message>
        <message>
            <source>For a change: %1</source>
            <translation>کچھ بدل کر: %1</translation>
        </message>
        <message>
            <source>For a goal.</source>
            <translation>ایک مقصد کے لیے۔</translation>
        </message>
        <message>
            <source>For a resting kite</source>
            <translation>آرام کرتی پتنگ کے لیے</translation>
        </message>
        <message>
            <source>For a steady kite</source>
            <translation>سیدھی اڑتی پتنگ کے لیے</translation>
        </message>
        <message>
            <source>For a tugging kite</source>
            <translation>کھینچتی پتنگ کے لیے</translation>
        </message>
        <message>
            <source>For an allergy.</source>
            <translation>الرجی کی وجہ سے۔</translation>
        </message>
        <message>
            <source>For one of your goals</source>
            <translation>آپ کے ایک مقصد کے لیے</translation>
        </message>
        <message>
            <source>For the age.</source>
            <translation>عمر کی وجہ سے۔</translation>
        </message>
        <message>
            <source>For the hand.</source>
            <translation>ہاتھ کی وجہ سے۔</translation>
        </message>
        <message>
            <source>For this child only. Wash hands before and after.</source>
            <translation>صرف اسی بچے کے لیے۔ پہلے اور بعد میں ہاتھ دھوئیں۔</translation>
        </message>
        <message>
            <source>For this home.</source>
            <translation>اس گھر کی وجہ سے۔</translation>
        </message>
        <message>
            <source>Fork</source>
            <translation>کھانے کا کانٹا</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>مل گیا</translation>
        </message>
        <message>
            <source>Found it, or a question?</source>
            <translation>ڈبا ملا، یا کوئی سوال؟</translation>
        </message>
        <message>
            <source>Found own way</source>
            <translation>اپنا طریقہ نکالا</translation>
        </message>
        <message>
            <source>Friday</source>
            <translation>جمعہ</translation>
        </message>
        <message>
            <source>From %1 and a half years on</source>
            <translation>ساڑھے %1 سال سے</translation>
        </message>
        <message>
            <source>From %1 months on</source>
            <translation>‏%1 ماہ سے</translation>
        </message>
        <message>
            <source>From %1 years on</source>
            <translation>‏%1 سال سے</translation>
        </message>
        <message>
            <source>Glitter</source>
            <translation>چمکی</translation>
        </message>
        <message>
            <source>Goal review: %1.</source>
            <translation>مقصد پر نظر: %1۔</translation>
        </message>
        <message>
            <source>Goal: %1</source>
            <translation>مقصد: %1</translation>
        </message>
        <message>
            <source>Goals, in the family's words</source>
            <translation>مقاصد، گھر والوں کے لفظوں میں</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>اب نہیں ہے</translation>
        </message>
        <message>
            <source>Good until %1.</source>
            <translation>‏%1 تک ٹھیک۔</translation>
        </message>
        <message>
            <source>Guest for a few days</source>
            <translation>چند دن کا مہمان</translation>
        </message>
        <message>
            <source>Hands wiped before they touch eyes or mouth. The can stays with you.</source>
            <translation>آنکھوں یا منہ کو چھونے سے پہلے ہاتھ پونچھیں۔ بوتل آپ کے پاس رہے۔</translation>
        </message>
        <message>
            <source>Has waited its turn</source>
            <translation>اس کی باری آ گئی</translation>
        </message>
        <message>
            <source>Hollow: %1 mm across inside, %2 mm deep.</source>
            <translation>کھوکھلا: اندر سے چوڑائی %1 ملی میٹر، گہرائی %2 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Home sheet: %1 does not live here</source>
            <translation>گھر کا پرچہ: %1 کا گھر یہ نہیں ہے</translation>
        </message>
        <message>
            <source>Home sheet: %1 does not tire fast</source>
            <translation>گھر کا پرچہ: %1 کو جلدی تھکن نہیں ہوتی</translation>
        </message>
        <message>
            <source>Home sheet: %1 eats food only</source>
            <translation>گھر کا پرچہ: %1 صرف خوراک کھاتا یا کھاتی ہے</translation>
        </message>
        <message>
            <source>Home sheet: %1 eats what is no food</source>
            <translation>گھر کا پرچہ: %1 وہ چیزیں کھاتا یا کھاتی ہے جو خوراک نہیں</translation>
        </message>
        <message>
            <source>Home sheet: %1 lives here</source>
            <translation>گھر کا پرچہ: %1 کا گھر یہی ہے</translation>
        </message>
        <message>
            <source>Home sheet: %1 puts nothing in the mouth</source>
            <translation>گھر کا پرچہ: %1 کے منہ میں کوئی چیز نہیں جاتی</translation>
        </message>
        <message>
            <source>Home sheet: %1 puts things in the mouth</source>
            <translation>گھر کا پرچہ: %1 کے منہ میں چیزیں جاتی ہیں</translation>
        </message>
        <message>
            <source>Home sheet: %1 tires fast</source>
            <translation>گھر کا پرچہ: %1 کو جلدی تھکن ہوتی ہے</translation>
        </message>
        <message>
            <source>Home sheet: a dog or a cat here</source>
            <translation>گھر کا پرچہ: یہاں کتا یا بلی ہے</translation>
        </message>
        <message>
            <source>Home sheet: a high place for the box</source>
            <translation>گھر کا پرچہ: ڈبے کے لیے اونچی جگہ ہے</translation>
        </message>
        <message>
            <source>Home sheet: a wheat allergy here</source>
            <translation>گھر کا پرچہ: یہاں گندم کی الرجی ہے</translation>
        </message>
        <message>
            <source>Home sheet: coeliac disease here</source>
            <translation>گھر کا پرچہ: یہاں سیلیک بیماری ہے</translation>
        </message>
        <message>
            <source>Home sheet: does not like firm touch</source>
            <translation>گھر کا پرچہ: دبا کر چھونا پسند نہیں</translation>
        </message>
        <message>
            <source>Home sheet: emergency number</source>
            <translation>گھر کا پرچہ: ہنگامی نمبر</translation>
        </message>
        <message>
            <source>Home sheet: latex is a risk here</source>
            <translation>گھر کا پرچہ: یہاں لیٹکس سے خطرہ ہے</translation>
        </message>
        <message>
            <source>Home sheet: latex is no risk here</source>
            <translation>گھر کا پرچہ: یہاں لیٹکس سے خطرہ نہیں ہے</translation>
        </message>
        <message>
            <source>Home sheet: latex may stay</source>
            <translation>گھر کا پرچہ: لیٹکس رہ سکتا ہے</translation>
        </message>
        <message>
            <source>Home sheet: latex must stay away</source>
            <translation>گھر کا پرچہ: لیٹکس سے بچنا لازم ہے</translation>
        </message>
        <message>
            <source>Home sheet: likes firm touch</source>
            <translation>گھر کا پرچہ: دبا کر چھونا پسند ہے</translation>
        </message>
        <message>
            <source>Home sheet: no coeliac disease here</source>
            <translation>گھر کا پرچہ: یہاں سیلیک بیماری نہیں ہے</translation>
        </message>
        <message>
            <source>Home sheet: no dog and no cat here</source>
            <translation>گھر کا پرچہ: یہاں نہ کتا ہے نہ بلی</translation>
        </message>
        <message>
            <source>Home sheet: no high place for the box</source>
            <translation>گھر کا پرچہ: ڈبے کے لیے اونچی جگہ نہیں ہے</translation>
        </message>
        <message>
            <source>Home sheet: no wheat allergy here</source>
            <translation>گھر کا پرچہ: یہاں گندم کی الرجی نہیں ہے</translation>
        </message>
        <message>
            <source>Home sheet: poison line</source>
            <translation>گھر کا پرچہ: زہر کی ہیلپ لائن</translation>
        </message>
        <message>
            <source>Home sheet: something said of %1</source>
            <translation>گھر کا پرچہ: %1 کے بارے میں کچھ لکھا گیا</translation>
        </message>
        <message>
            <source>Home sheet: something said of the home</source>
            <translation>گھر کا پرچہ: گھر کے بارے میں کچھ لکھا گیا</translation>
        </message>
        <message>
            <source>Hot glue</source>
            <translation>گرم گوند</translation>
        </message>
        <message>
            <source>How it felt to %1. What %1 shows with the kite stays at home.</source>
            <translation>‏%1 کو کیسا لگا۔ %1 پتنگ سے جو دکھاتا یا دکھاتی ہے وہ گھر میں رہتا ہے۔</translation>
        </message>
        <message>
            <source>How many came?</source>
            <translation>کتنے آئے؟</translation>
        </message>
        <message>
            <source>I need a grown-up</source>
            <translation>مجھے کوئی بڑا چاہیے</translation>
        </message>
        <message>
            <source>If it grows</source>
            <translation>اگر بڑھ جائے</translation>
        </message>
        <message>
            <source>If it was swallowed: call the emergency number or the poison line now, even if your child seems well.</source>
            <translation>اگر نگل لیا ہو: ہنگامی نمبر یا زہر کی ہیلپ لائن پر ابھی فون کریں، چاہے بچہ ٹھیک لگے۔</translation>
        </message>
        <message>
            <source>In a mouth %1, says %2.</source>
            <translation>منہ میں گیا، %1، %2 کے مطابق۔</translation>
        </message>
        <message>
            <source>In its place: %1, asked for.</source>
            <translation>اس کی جگہ: %1، مانگا گیا۔</translation>
        </message>
        <message>
            <source>In its place: %1.</source>
            <translation>اس کی جگہ: %1۔</translation>
        </message>
        <message>
            <source>In the bag</source>
            <translation>تھیلے میں</translation>
        </message>
        <message>
            <source>In the same room as %1, watching.</source>
            <translation>‏%1 کے ساتھ اسی کمرے میں، نظر رکھتے ہوئے۔</translation>
        </message>
        <message>
            <source>In, by whom</source>
            <translation>اندر، کس نے</translation>
        </message>
        <message>
            <source>In, says %1.</source>
            <translation>اندر ہے، %1 کہتے ہیں۔</translation>
        </message>
        <message>
            <source>In, says %1. Looked over by %2.</source>
            <translation>اندر ہے، %1 کہتے ہیں۔ جانچ: %2۔</translation>
        </message>
        <message>
            <source>It can be loud, and it is quiet time now.</source>
            <translation>اس میں شور ہو سکتا ہے، اور ابھی خاموشی کا وقت ہے۔</translation>
        </message>
        <message>
            <source>It can be loud. Stop when anyone covers their ears.</source>
            <translation>شور ہو سکتا ہے۔ کوئی کان ڈھانپے تو رکیں۔</translation>
        </message>
        <message>
            <source>It can be washed with soap, rinsed and dried.</source>
            <translation>اسے صابن سے دھو کر، کھنگال کر خشک کیا جا سکتا ہے۔</translation>
        </message>
        <message>
            <source>It can come from latex, food or dough. Say what was touched or eaten.</source>
            <translation>یہ لیٹکس، کھانے یا کھیل کے آٹے سے ہو سکتا ہے۔ بتائیں کہ کیا چھوا یا کھایا گیا۔</translation>
        </message>
        <message>
            <source>It cannot be made clean. Throw it away.</source>
            <translation>یہ صاف نہیں ہو سکتا۔ پھینک دیں۔</translation>
        </message>
        <message>
            <source>It cannot be washed: once it was in a mouth it is thrown away, or stays with one child.</source>
            <translation>اسے دھویا نہیں جا سکتا: ایک بار منہ میں جائے تو پھینک دیں، یا ایک ہی بچے کے پاس رہے۔</translation>
        </message>
        <message>
            <source>It is not locked: whoever opens it can read all of it, and it tells of a child's health. Delete it when you need it no more.</source>
            <translation>اس پر تالا نہیں: جو کھولے وہ سب پڑھ سکتا ہے، اور اس میں بچے کی صحت کا ذکر ہے۔ جب ضرورت نہ رہے تو اسے مٹا دیں۔</translation>
        </message>
        <message>
            <source>It is still in the bag.</source>
            <translation>وہ اب بھی تھیلے میں ہے۔</translation>
        </message>
        <message>
            <source>It is still resting.</source>
            <translation>وہ اب بھی آرام میں ہے۔</translation>
        </message>
        <message>
            <source>It is still steady.</source>
            <translation>وہ اب بھی سیدھی اڑ رہی ہے۔</translation>
        </message>
        <message>
            <source>It is still tugging.</source>
            <translation>وہ اب بھی کھینچ رہی ہے۔</translation>
        </message>
        <message>
            <source>It is taken up again</source>
            <translation>اسے دوبارہ لیا گیا</translation>
        </message>
        <message>
            <source>It keeps: no limit is known.</source>
            <translation>یہ چلتا رہتا ہے: کوئی حد معلوم نہیں۔</translation>
        </message>
        <message>
            <source>It matters less now</source>
            <translation>اب یہ کم اہم ہے</translation>
        </message>
        <message>
            <source>It may run out before the next round.</source>
            <translation>اگلے پھیرے سے پہلے ختم ہو سکتا ہے۔</translation>
        </message>
        <message>
            <source>It may stick over a small child's nose and mouth.</source>
            <translation>یہ چھوٹے بچے کی ناک اور منہ پر چپک سکتا ہے۔</translation>
        </message>
        <message>
            <source>It must not be packed as it is written. Change its list first.</source>
            <translation>جیسا لکھا ہے ویسا نہ بھرا جائے۔ پہلے اس کی فہرست بدلیں۔</translation>
        </message>
        <message>
            <source>It needs %1, and fewer are left: %2.</source>
            <translation>اسے %1 چاہییں، مگر باقی کم ہیں: %2۔</translation>
        </message>
        <message>
            <source>It needs a name, of at most 80 letters.</source>
            <translation>ایک نام چاہیے، زیادہ سے زیادہ 80 حروف۔</translation>
        </message>
        <message>
            <source>It needs two to four steps.</source>
            <translation>دو سے چار قدم چاہئیں۔</translation>
        </message>
        <message>
            <source>It probably runs out before the next round.</source>
            <translation>اگلے پھیرے سے پہلے شاید ختم ہو جائے گا۔</translation>
        </message>
        <message>
            <source>It smells, and strong smells are avoided here.</source>
            <translation>اس میں بو ہے، اور یہاں تیز بو سے بچا جاتا ہے۔</translation>
        </message>
        <message>
            <source>It smells. Stop if skin, eyes or breath do not like it.</source>
            <translation>اس میں بو ہے۔ جلد، آنکھوں یا سانس کو اچھا نہ لگے تو رکیں۔</translation>
        </message>
        <message>
            <source>It uses touch, and nobody has said that touch is liked here.</source>
            <translation>اس میں چھونا ہے، اور کسی نے نہیں بتایا کہ یہاں چھونا پسند ہے۔</translation>
        </message>
        <message>
            <source>It was in a mouth. Wash it first: %1.</source>
            <translation>یہ منہ میں گیا تھا۔ پہلے دھوئیں: %1۔</translation>
        </message>
        <message>
            <source>It works: the phones can leave and fetch there what they share.</source>
            <translation>ٹھیک ہے: فون وہاں مشترک چیزیں رکھ اور لے سکتے ہیں۔</translation>
        </message>
        <message>
            <source>Item</source>
            <translation>چیز</translation>
        </message>
        <message>
            <source>Its loop: %1 mm round.</source>
            <translation>اس کا پھندا: گھیر %1 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Its words have been changed. What was said of earlier words stays with them.</source>
            <translation>اس کے الفاظ بدلے گئے ہیں۔ پہلے الفاظ پر جو کہا گیا وہ انہی کے ساتھ ہے۔</translation>
        </message>
        <message>
            <source>January</source>
            <translation>جنوری</translation>
        </message>
        <message>
            <source>July</source>
            <translation>جولائی</translation>
        </message>
        <message>
            <source>June</source>
            <translation>جون</translation>
        </message>
        <message>
            <source>Keep %1 and %2 away until found.</source>
            <translation>ملنے تک %1 اور %2 کو دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep %1 away until found.</source>
            <translation>ملنے تک %1 کو دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep %1, %2 and all other small children away until found.</source>
            <translation>ملنے تک %1، %2 اور باقی سب چھوٹے بچوں کو دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep it in the box. We type it in at the next visit.</source>
            <translation>اسے ڈبے میں رکھیں۔ ہم اگلی ملاقات پر درج کریں گے۔</translation>
        </message>
        <message>
            <source>Keep small children away until found.</source>
            <translation>ملنے تک چھوٹے بچوں کو دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep the box out of %1's reach.</source>
            <translation>ڈبا %1 کی پہنچ سے دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep the box out of reach of %1 and %2.</source>
            <translation>ڈبا %1 اور %2 کی پہنچ سے دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep the box out of reach of %1, %2 and all other small children.</source>
            <translation>ڈبا %1، %2 اور باقی سب چھوٹے بچوں کی پہنچ سے دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep the box out of reach of small children.</source>
            <translation>ڈبا چھوٹے بچوں کی پہنچ سے دور رکھیں۔</translation>
        </message>
        <message>
            <source>Keep them with the box, and hand them on with it.</source>
            <translation>انہیں ڈبے کے ساتھ رکھیں اور ساتھ ہی آگے دیں۔</translation>
        </message>
        <message>
            <source>Keep this folder safe</source>
            <translation>یہ فولڈر سنبھال کر رکھیں</translation>
        </message>
        <message>
            <source>Kite in the bag. That's fine.</source>
            <translation>پتنگ تھیلے میں۔ یہ بھی ٹھیک ہے۔</translation>
        </message>
        <message>
            <source>Known from before</source>
            <translation>پہلے سے جانا پہچانا</translation>
        </message>
        <message>
            <source>Latex</source>
            <translation>لیٹکس</translation>
        </message>
        <message>
            <source>Latex must stay away, says %1, %2.</source>
            <translation>لیٹکس دور رہے، %1 نے کہا، %2۔</translation>
        </message>
        <message>
            <source>Learn first aid from a trained instructor.</source>
            <translation>ابتدائی طبی امداد کسی تربیت یافتہ استاد سے سیکھیں۔</translation>
        </message>
        <message numerus="yes">
            <source>Left open %1 times.</source>
            <translation>
                <numerusform>‏%1 بار کھلا رہا۔</numerusform>
                <numerusform>‏%1 بار کھلا رہا۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Left open once.</source>
            <translation>ایک بار کھلا رہا۔</translation>
        </message>
        <message>
            <source>Left open twice.</source>
            <translation>دو بار کھلا رہا۔</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <translation>شامل نہیں: %1۔</translation>
        </message>
        <message>
            <source>Left over</source>
            <translation>بچت</translation>
        </message>
        <message>
            <source>Left-handed scissors only.</source>
            <translation>صرف بائیں ہاتھ والی قینچی۔</translation>
        </message>
        <message>
            <source>Less than we expect</source>
            <translation>ہماری توقع سے کم</translation>
        </message>
        <message>
            <source>Lid list %1, from %2</source>
            <translation>ڈھکن کی فہرست %1، %2 سے</translation>
        </message>
        <message>
            <source>Lidlark cannot find %1. Nothing was changed. Check the name, then try again.</source>
            <translation>‏Lidlark کو %1 نہیں ملا۔ کچھ نہیں بدلا۔ نام دیکھیں، پھر دوبارہ کوشش کریں۔</translation>
        </message>
        <message>
            <source>Lifting</source>
            <translation>اٹھانا</translation>
        </message>
        <message>
            <source>Light things, two hands, close to the body.</source>
            <translation>ہلکی چیزیں، دو ہاتھ، جسم کے پاس۔</translation>
        </message>
        <message>
            <source>Look for nicks first. An adult holds it. Never near a face, a neck or a door handle.</source>
            <translation>پہلے کٹ دیکھیں۔ بڑا شخص تھامے۔ کبھی چہرے، گردن یا دروازے کے ہینڈل کے پاس نہیں۔</translation>
        </message>
        <message>
            <source>Look now: table, floor, clothes, dough.</source>
            <translation>ابھی دیکھیں: میز، فرش، کپڑے، آٹا۔</translation>
        </message>
        <message>
            <source>Look now: table, floor, clothes, under the chairs.</source>
            <translation>ابھی دیکھیں: میز، فرش، کپڑے، کرسیوں کے نیچے۔</translation>
        </message>
        <message>
            <source>Looked at %1.</source>
            <translation>دیکھا گیا: %1۔</translation>
        </message>
        <message>
            <source>Looked at before every use.</source>
            <translation>ہر استعمال سے پہلے دیکھا جاتا ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>Looked at every %1 days.</source>
            <translation>
                <numerusform>ہر %1 دن بعد دیکھا جاتا ہے۔</numerusform>
                <numerusform>ہر %1 دن بعد دیکھا جاتا ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Looked at every day.</source>
            <translation>ہر روز دیکھا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Made of latex: not in a home where anyone must avoid it.</source>
            <translation>لیٹکس کا بنا ہے: جس گھر میں کسی کے لیے اس سے بچنا لازم ہو وہاں نہیں۔</translation>
        </message>
        <message>
            <source>March</source>
            <translation>مارچ</translation>
        </message>
        <message>
            <source>May</source>
            <translation>مئی</translation>
        </message>
        <message>
            <source>Me</source>
            <translation>پہلے میں خود</translation>
        </message>
        <message>
            <source>Monday</source>
            <translation>پیر</translation>
        </message>
        <message>
            <source>More fits when it need not be quiet.</source>
            <translation>خاموشی ضروری نہ ہو تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>More fits when the box is filled up again.</source>
            <translation>ڈبا پھر بھر جائے تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>More fits when the box is here.</source>
            <translation>ڈبا یہاں ہو تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>More fits when the floor has been looked over.</source>
            <translation>فرش دیکھ لیا جائے تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>More fits when the open questions on the home sheet are answered.</source>
            <translation>گھر کے پرچے کے باقی سوالوں کا جواب ہو تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>More fits when you can sit right beside. Tap the names to say so.</source>
            <translation>آپ بالکل پاس بیٹھ سکیں تو اور مناسب ہوں گے۔ بتانے کو نام چھوئیں۔</translation>
        </message>
        <message>
            <source>More fits with fewer small children in the room. Tap the names to say who is here.</source>
            <translation>کمرے میں چھوٹے بچے کم ہوں تو اور مناسب ہوں گے۔ کون یہاں ہے، بتانے کو نام چھوئیں۔</translation>
        </message>
        <message>
            <source>More than one of these is new here.</source>
            <translation>ان میں ایک سے زیادہ یہاں نئی ہیں۔</translation>
        </message>
        <message>
            <source>More than one of these makes a mess.</source>
            <translation>ان میں ایک سے زیادہ سے گندگی ہوتی ہے۔</translation>
        </message>
        <message>
            <source>More than we expect</source>
            <translation>ہماری توقع سے زیادہ</translation>
        </message>
        <message>
            <source>Mostly our guess: %1 went in %2.</source>
            <translation>زیادہ تر ہمارا اندازہ۔ %2 میں کم: %1۔</translation>
        </message>
        <message>
            <source>Much less than we expect</source>
            <translation>ہماری توقع سے بہت کم</translation>
        </message>
        <message>
            <source>Much more than we expect</source>
            <translation>ہماری توقع سے بہت زیادہ</translation>
        </message>
        <message>
            <source>Need</source>
            <translation>ضرورت</translation>
        </message>
        <message>
            <source>Needed help</source>
            <translation>مدد چاہیے تھی</translation>
        </message>
        <message>
            <source>Needs no table</source>
            <translation>میز نہیں چاہیے</translation>
        </message>
        <message>
            <source>Needs someone in the same room.</source>
            <translation>کوئی اسی کمرے میں چاہیے۔</translation>
        </message>
        <message>
            <source>Needs someone right beside.</source>
            <translation>کوئی بالکل پاس چاہیے۔</translation>
        </message>
        <message>
            <source>Needs someone within arm's reach.</source>
            <translation>کوئی بازو کی پہنچ میں چاہیے۔</translation>
        </message>
        <message>
            <source>Needs stock</source>
            <translation>سامان چاہیے</translation>
        </message>
        <message>
            <source>Never on a finger, a wrist or a neck. Pluck away from faces.</source>
            <translation>کبھی انگلی، کلائی یا گردن پر نہیں۔ چہروں سے دور چھیڑیں۔</translation>
        </message>
        <message>
            <source>Never over a face or round a neck. Arms stay free.</source>
            <translation>کبھی چہرے پر یا گردن کے گرد نہیں۔ بازو آزاد رہیں۔</translation>
        </message>
        <message>
            <source>Never round a neck or a wrist. Straight back into the lid bag.</source>
            <translation>کبھی گردن یا کلائی کے گرد نہیں۔ سیدھا واپس ڈھکن کی تھیلی میں۔</translation>
        </message>
        <message>
            <source>New. %1</source>
            <translation>نئی۔ %1</translation>
        </message>
        <message>
            <source>No %1 in this box.</source>
            <translation>اس ڈبے میں یہ نہیں: %1۔</translation>
        </message>
        <message>
            <source>No %1 left in the box.</source>
            <translation>ڈبے میں %1 باقی نہیں۔</translation>
        </message>
        <message>
            <source>No box holds lot %1, as far as lots were written down.</source>
            <translation>جہاں تک لاٹ لکھے گئے، کسی ڈبے میں لاٹ %1 نہیں۔</translation>
        </message>
        <message>
            <source>No box of this build waits to be packed.</source>
            <translation>اس مجموعے کا کوئی ڈبہ بھرنے کو باقی نہیں۔</translation>
        </message>
        <message>
            <source>No change: %1.</source>
            <translation>کوئی تبدیلی نہیں: %1۔</translation>
        </message>
        <message>
            <source>No code can be read in this picture. Take it again, nearer and straight on, or type the nine words.</source>
            <translation>اس تصویر میں کوڈ پڑھا نہیں جا سکتا۔ قریب سے اور سیدھی تصویر پھر لیں، یا نو لفظ لکھیں۔</translation>
        </message>
        <message>
            <source>No code is waiting, or its ten minutes are over. Make a new one.</source>
            <translation>کوئی کوڈ منتظر نہیں، یا اس کے دس منٹ پورے ہو گئے۔ نیا بنائیں۔</translation>
        </message>
        <message>
            <source>No folder can be made there. Ask whoever looks after it for the right to write.</source>
            <translation>وہاں فولڈر نہیں بن سکتا۔ جو اس جگہ کو دیکھتا ہے اس سے لکھنے کی اجازت مانگیں۔</translation>
        </message>
        <message>
            <source>No latex in this box.</source>
            <translation>اس ڈبے میں لیٹیکس نہیں۔</translation>
        </message>
        <message>
            <source>No line promises a result.</source>
            <translation>کوئی سطر نتیجے کا وعدہ نہیں کرتی۔</translation>
        </message>
        <message>
            <source>No step needs a colour.</source>
            <translation>کسی قدم کے لیے رنگ ضروری نہیں۔</translation>
        </message>
        <message>
            <source>No wheat in this box.</source>
            <translation>اس ڈبے میں گندم نہیں۔</translation>
        </message>
        <message>
            <source>Nobody answers there now. Check the address and the network, then try again.</source>
            <translation>وہاں ابھی کوئی جواب نہیں دیتا۔ پتا اور نیٹ ورک دیکھیں، پھر کوشش کریں۔</translation>
        </message>
        <message>
            <source>Nobody has received it yet.</source>
            <translation>ابھی کسی کو نہیں ملی۔</translation>
        </message>
        <message>
            <source>Nobody has said how old your child is, so only a few are offered.</source>
            <translation>کسی نے بچے کی عمر نہیں بتائی، اس لیے صرف چند دکھائی جاتی ہیں۔</translation>
        </message>
        <message>
            <source>Nobody has used the code yet.</source>
            <translation>ابھی تک کسی نے کوڈ استعمال نہیں کیا۔</translation>
        </message>
        <message>
            <source>Nobody waits for anything.</source>
            <translation>کوئی کسی چیز کا منتظر نہیں۔</translation>
        </message>
        <message>
            <source>Noise</source>
            <translation>شور</translation>
        </message>
        <message>
            <source>None has gone in %1 so far. The rest is our guess.</source>
            <translation>‏%1 میں اب تک کوئی کم نہیں ہوا۔ باقی ہمارا اندازہ ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>None in the other %1 weeks.</source>
            <translation>
                <numerusform>باقی %1 ہفتے میں کوئی نہیں۔</numerusform>
                <numerusform>باقی %1 ہفتوں میں کوئی نہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>None in the other week.</source>
            <translation>دوسرے ہفتے میں کوئی نہیں۔</translation>
        </message>
        <message>
            <source>None is agreed yet.</source>
            <translation>ابھی کوئی طے نہیں ہوا۔</translation>
        </message>
        <message>
            <source>None left: %1.</source>
            <translation>کچھ نہیں بچا: %1۔</translation>
        </message>
        <message>
            <source>None of these is an old favourite yet.</source>
            <translation>ان میں ابھی کوئی پرانی پسندیدہ نہیں۔</translation>
        </message>
        <message>
            <source>Not before %1 and a half years, because of %2.</source>
            <translation>ساڑھے %1 سال سے پہلے نہیں۔ وجہ: %2۔</translation>
        </message>
        <message numerus="yes">
            <source>Not before %1 months, because of %2.</source>
            <translation>
                <numerusform>‏%1 مہینے سے پہلے نہیں۔ وجہ: %2۔</numerusform>
                <numerusform>‏%1 مہینوں سے پہلے نہیں۔ وجہ: %2۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not before %1 years, because of %2.</source>
            <translation>
                <numerusform>‏%1 سال سے پہلے نہیں۔ وجہ: %2۔</numerusform>
                <numerusform>‏%1 سال سے پہلے نہیں۔ وجہ: %2۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Not everything in it has been counted yet.</source>
            <translation>ابھی سب کچھ نہیں گنا گیا۔</translation>
        </message>
        <message>
            <source>Not for a while</source>
            <translation>بہت دن سے نہیں</translation>
        </message>
        <message>
            <source>Not handed over yet.</source>
            <translation>ابھی نہیں دیا گیا۔</translation>
        </message>
        <message>
            <source>Not in this home: %1.</source>
            <translation>اس گھر میں نہیں: %1۔</translation>
        </message>
        <message>
            <source>Not opened yet.</source>
            <translation>ابھی کھولا نہیں گیا۔</translation>
        </message>
        <message>
            <source>Not reckoned, for it has no price: %1.</source>
            <translation>حساب میں نہیں، کیونکہ قیمت نہیں لکھی: %1۔</translation>
        </message>
        <message>
            <source>Not sure how many: %1.</source>
            <translation>معلوم نہیں کتنے: %1۔</translation>
        </message>
        <message>
            <source>Not told here. It is the family's own.</source>
            <translation>یہاں نہیں بتایا گیا۔ یہ گھر والوں کی اپنی بات ہے۔</translation>
        </message>
        <message>
            <source>Not while skin is sore or broken.</source>
            <translation>جلد دُکھتی یا کٹی پھٹی ہو تو نہیں۔</translation>
        </message>
        <message>
            <source>Nothing can be taken away from the place again. Choose another.</source>
            <translation>اس جگہ سے کچھ ہٹایا نہیں جا سکتا۔ کوئی اور چنیں۔</translation>
        </message>
        <message>
            <source>Nothing can be written there: perhaps only reading is allowed.</source>
            <translation>وہاں کچھ لکھا نہیں جا سکتا: شاید صرف پڑھنے کی اجازت ہے۔</translation>
        </message>
        <message>
            <source>Nothing from the box is needed. Quiet ones come first.</source>
            <translation>ڈبے سے کچھ نہیں چاہیے۔ پہلے خاموش کھیل ہیں۔</translation>
        </message>
        <message>
            <source>Nothing is written down.</source>
            <translation>کچھ نہیں لکھا گیا۔</translation>
        </message>
        <message>
            <source>Nothing on this page grades anybody.</source>
            <translation>اس صفحے پر کوئی چیز کسی کو نہیں جانچتی۔</translation>
        </message>
        <message>
            <source>Nothing stands on this list now. Everything, in the app, says why.</source>
            <translation>اس فہرست میں اب کچھ نہیں۔ وجہ ایپ میں سب کچھ کے نیچے ہے۔</translation>
        </message>
        <message>
            <source>November</source>
            <translation>نومبر</translation>
        </message>
        <message>
            <source>Now it is in the bag.</source>
            <translation>اب وہ تھیلے میں ہے۔</translation>
        </message>
        <message>
            <source>Now it is resting.</source>
            <translation>اب وہ آرام میں ہے۔</translation>
        </message>
        <message>
            <source>Now it is steady.</source>
            <translation>اب وہ سیدھی اڑ رہی ہے۔</translation>
        </message>
        <message>
            <source>Now it is tugging.</source>
            <translation>اب وہ کھینچ رہی ہے۔</translation>
        </message>
        <message>
            <source>Now there are clouds in the way.</source>
            <translation>اب راستے میں بادل ہیں۔</translation>
        </message>
        <message>
            <source>October</source>
            <translation>اکتوبر</translation>
        </message>
        <message>
            <source>Offered from %1 and a half years.</source>
            <translation>ساڑھے %1 سال سے۔</translation>
        </message>
        <message numerus="yes">
            <source>Offered from %1 months.</source>
            <translation>
                <numerusform>‏%1 مہینے سے۔</numerusform>
                <numerusform>‏%1 مہینوں سے۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Offered from %1 years.</source>
            <translation>
                <numerusform>‏%1 سال سے۔</numerusform>
                <numerusform>‏%1 سال سے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>On %1 %2 your child was not born yet. Nothing was changed. Check the phone's date and the birth month.</source>
            <translation>‏%1 %2 کو آپ کا بچہ ابھی پیدا نہیں ہوا تھا۔ کچھ نہیں بدلا۔ فون کی تاریخ اور پیدائش کا مہینہ دیکھیں۔</translation>
        </message>
        <message>
            <source>On %1 your child was not born yet. Nothing was changed. Check the phone's date and the birth month.</source>
            <translation>‏%1 کو آپ کا بچہ ابھی پیدا نہیں ہوا تھا۔ کچھ نہیں بدلا۔ فون کی تاریخ اور پیدائش کا مہینہ دیکھیں۔</translation>
        </message>
        <message>
            <source>On its way</source>
            <translation>راستے میں</translation>
        </message>
        <message>
            <source>On the shelf</source>
            <translation>شیلف پر</translation>
        </message>
        <message>
            <source>On the way: %1.</source>
            <translation>راستے میں: %1۔</translation>
        </message>
        <message>
            <source>On this phone only</source>
            <translation>صرف اس فون پر</translation>
        </message>
        <message>
            <source>On this phone only so far</source>
            <translation>ابھی تک صرف اس فون پر</translation>
        </message>
        <message>
            <source>On which day an activity was last offered. Lidlark keeps it so that each gets its turn, and shows it to nobody.</source>
            <translation>یہ کہ کوئی سرگرمی آخری بار کس دن دکھائی گئی۔ Lidlark اسے اس لیے رکھتا ہے کہ ہر ایک کی باری آئے، اور کسی کو نہیں دکھاتا۔</translation>
        </message>
        <message>
            <source>One %1 is missing.</source>
            <translation>ایک %1 غائب ہے۔</translation>
        </message>
        <message>
            <source>One box more: nothing more to pay. What lies in the box is worth %1.</source>
            <translation>ایک ڈبہ اور: مزید کچھ نہیں دینا۔ ڈبے میں جو ہے اس کی قیمت %1 ہے۔</translation>
        </message>
        <message>
            <source>One box more: the till asks for %1 more. What lies in the box is worth %2.</source>
            <translation>ایک ڈبہ اور: دکان پر %1 مزید دینے ہوں گے۔ ڈبے میں جو ہے اس کی قیمت %2 ہے۔</translation>
        </message>
        <message>
            <source>One child</source>
            <translation>ایک بچہ</translation>
        </message>
        <message>
            <source>One family's file cannot be read: %1. It was left as it is. The others are as they were.</source>
            <translation>ایک خاندان کی فائل پڑھی نہیں جا سکتی: %1۔ اسے ویسا ہی چھوڑ دیا گیا۔ باقی ویسی ہی ہیں جیسی تھیں۔</translation>
        </message>
        <message>
            <source>One less noise. One less thing on the table. Lid on what you are not using.</source>
            <translation>ایک شور کم۔ میز پر ایک چیز کم۔ جو استعمال میں نہیں اس پر ڈھکن لگائیں۔</translation>
        </message>
        <message>
            <source>One line of plain text only.</source>
            <translation>صرف سادہ متن کی ایک سطر۔</translation>
        </message>
        <message>
            <source>One note waits on this phone</source>
            <translation>اس فون پر ایک نوٹ منتظر ہے</translation>
        </message>
        <message>
            <source>One of the items has no name of its own. Say which item it is.</source>
            <translation>ایک چیز کا اپنا نام نہیں۔ بتائیں کہ وہ کون سی چیز ہے۔</translation>
        </message>
        <message>
            <source>One page of the catalogue cannot be read and is left out: %1. All else is here.</source>
            <translation>فہرست کا ایک صفحہ پڑھا نہیں جا سکتا اور چھوڑ دیا گیا ہے: %1۔ باقی سب یہاں ہے۔</translation>
        </message>
        <message>
            <source>One small piece is not found.</source>
            <translation>ایک چھوٹا ٹکڑا نہیں ملا۔</translation>
        </message>
        <message>
            <source>One week on paper</source>
            <translation>کاغذ پر ایک ہفتہ</translation>
        </message>
        <message>
            <source>Only a phone of a parent or the therapist, and one that is in the crew, can do that. Nothing was changed.</source>
            <translation>یہ صرف والدین یا تھراپسٹ کا فون کر سکتا ہے، اور وہ جو ساتھیوں میں ہو۔ کچھ نہیں بدلا۔</translation>
        </message>
        <message>
            <source>Only an adult pumps it up or handles it flat. Pick up every piece if it bursts.</source>
            <translation>صرف بڑا شخص پمپ سے پھلائے یا پچکا ہوا ہاتھ میں لے۔ پھٹ جائے تو ہر ٹکڑا اٹھائیں۔</translation>
        </message>
        <message>
            <source>Only the therapist's phone does that. Nothing was changed.</source>
            <translation>یہ صرف معالج کا فون کرتا ہے۔ کچھ نہیں بدلا۔</translation>
        </message>
        <message>
            <source>Open pegs away from skin. Throw away a broken spring.</source>
            <translation>کلپ جلد سے دور کھولیں۔ ٹوٹا اسپرنگ پھینک دیں۔</translation>
        </message>
        <message>
            <source>Opened %1.</source>
            <translation>کھولا گیا: %1۔</translation>
        </message>
        <message>
            <source>Opened, it probably stays good %1 to %2 weeks.</source>
            <translation>کھلنے کے بعد شاید %1 سے %2 ہفتے ٹھیک رہتا ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good %1 weeks or longer.</source>
            <translation>
                <numerusform>کھلنے کے بعد شاید %1 ہفتہ یا زیادہ ٹھیک رہتا ہے۔</numerusform>
                <numerusform>کھلنے کے بعد شاید %1 ہفتے یا زیادہ ٹھیک رہتا ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Opened, it probably stays good a week or longer.</source>
            <translation>کھلنے کے بعد شاید ایک ہفتہ یا زیادہ ٹھیک رہتا ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good about %1 weeks.</source>
            <translation>
                <numerusform>کھلنے کے بعد شاید تقریباً %1 ہفتہ ٹھیک رہتا ہے۔</numerusform>
                <numerusform>کھلنے کے بعد شاید تقریباً %1 ہفتے ٹھیک رہتا ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Opened, it probably stays good about a week.</source>
            <translation>کھلنے کے بعد شاید تقریباً ایک ہفتہ ٹھیک رہتا ہے۔</translation>
        </message>
        <message>
            <source>Opened, it probably stays good less than a week.</source>
            <translation>کھلنے کے بعد شاید ایک ہفتے سے کم ٹھیک رہتا ہے۔</translation>
        </message>
        <message>
            <source>Opened, it probably stays good longer than a year.</source>
            <translation>کھلنے کے بعد شاید ایک سال سے زیادہ ٹھیک رہتا ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>Opened, it probably stays good up to %1 weeks.</source>
            <translation>
                <numerusform>کھلنے کے بعد شاید %1 ہفتے تک ٹھیک رہتا ہے۔</numerusform>
                <numerusform>کھلنے کے بعد شاید %1 ہفتوں تک ٹھیک رہتا ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>بھرنے کی فہرست</translation>
        </message>
        <message>
            <source>Packed</source>
            <translation>ڈبے میں رکھا</translation>
        </message>
        <message>
            <source>Packed by</source>
            <translation>بھرنے والا</translation>
        </message>
        <message>
            <source>Packed for %1, not handed over yet.</source>
            <translation>‏%1 کے لیے بھرا گیا، ابھی نہیں دیا گیا۔</translation>
        </message>
        <message>
            <source>Packed, and nobody's yet.</source>
            <translation>بھرا ہوا ہے، ابھی کسی کا نہیں۔</translation>
        </message>
        <message>
            <source>Packs to buy</source>
            <translation>خریدنے کے پیکٹ</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>صفحہ %1، کل %2</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>کاغذ</translation>
        </message>
        <message>
            <source>Paper pieces stay over 6 cm where anyone mouths things.</source>
            <translation>جہاں کوئی چیزیں منہ میں ڈالتا ہو وہاں کاغذ کے ٹکڑے ۶ سینٹی میٹر سے بڑے رہیں۔</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>ماں یا باپ</translation>
        </message>
        <message>
            <source>Past its date. Throw it away.</source>
            <translation>تاریخ گزر گئی۔ پھینک دیں۔</translation>
        </message>
        <message>
            <source>Past steady to the other side: %1.</source>
            <translation>سیدھی اڑان سے آگے دوسری طرف: %1۔</translation>
        </message>
        <message>
            <source>Pegs</source>
            <translation>کلپ</translation>
        </message>
        <message>
            <source>Pets</source>
            <translation>پالتو جانور</translation>
        </message>
        <message numerus="yes">
            <source>Pieces of %1 balloons are missing.</source>
            <translation>
                <numerusform>‏%1 غبارے کے ٹکڑے غائب ہیں۔</numerusform>
                <numerusform>‏%1 غباروں کے ٹکڑے غائب ہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Pieces of a balloon are missing.</source>
            <translation>ایک غبارے کے ٹکڑے غائب ہیں۔</translation>
        </message>
        <message>
            <source>Play takes three to eight minutes.</source>
            <translation>کھیل تین سے آٹھ منٹ کا ہوتا ہے۔</translation>
        </message>
        <message>
            <source>Plays that take it: %1. All can be made without it.</source>
            <translation>اس سے ہونے والے کھیل: %1۔ سب اس کے بغیر بھی ہو سکتے ہیں۔</translation>
        </message>
        <message>
            <source>Plays that take it: %1. Lost without it: %2.</source>
            <translation>اس سے ہونے والے کھیل: %1۔ اس کے بغیر نہیں ہوں گے: %2۔</translation>
        </message>
        <message>
            <source>Practises %1</source>
            <translation>مشق: %1</translation>
        </message>
        <message>
            <source>Price: Lidlark reckons in hundredths, and %1 has none. It cannot keep this price.</source>
            <translation>قیمت: Lidlark سوویں حصوں میں حساب کرتا ہے، اور %1 میں وہ نہیں۔ یہ قیمت محفوظ نہیں ہو سکتی۔</translation>
        </message>
        <message>
            <source>Price: at most %1 for a pack.</source>
            <translation>قیمت: ایک پیکٹ کے زیادہ سے زیادہ %1۔</translation>
        </message>
        <message>
            <source>Price: digits and one dot only, such as %1.</source>
            <translation>قیمت: صرف ہندسے اور ایک نقطہ، جیسے %1۔</translation>
        </message>
        <message>
            <source>Price: nothing below zero.</source>
            <translation>قیمت: صفر سے کم نہیں۔</translation>
        </message>
        <message>
            <source>Price: two digits after the dot, such as %1.</source>
            <translation>قیمت: نقطے کے بعد دو ہندسے، جیسے %1۔</translation>
        </message>
        <message>
            <source>Probably lasts %1 to %2 weeks.</source>
            <translation>شاید %1 سے %2 ہفتے چلے گا۔</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts %1 weeks or longer.</source>
            <translation>
                <numerusform>شاید %1 ہفتہ یا زیادہ چلے گا۔</numerusform>
                <numerusform>شاید %1 ہفتے یا زیادہ چلے گا۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Probably lasts a week or longer.</source>
            <translation>شاید ایک ہفتہ یا زیادہ چلے گا۔</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts about %1 weeks.</source>
            <translation>
                <numerusform>شاید تقریباً %1 ہفتہ چلے گا۔</numerusform>
                <numerusform>شاید تقریباً %1 ہفتے چلے گا۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Probably lasts about a week.</source>
            <translation>شاید تقریباً ایک ہفتہ چلے گا۔</translation>
        </message>
        <message>
            <source>Probably lasts less than a week.</source>
            <translation>شاید ایک ہفتے سے کم چلے گا۔</translation>
        </message>
        <message>
            <source>Probably lasts longer than a year.</source>
            <translation>شاید ایک سال سے زیادہ چلے گا۔</translation>
        </message>
        <message numerus="yes">
            <source>Probably lasts up to %1 weeks.</source>
            <translation>
                <numerusform>شاید %1 ہفتے تک چلے گا۔</numerusform>
                <numerusform>شاید %1 ہفتوں تک چلے گا۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>خاموش</translation>
        </message>
        <message>
            <source>Quiet can be just quiet. If your child seems unwell or unusually hard to wake, skip play and get advice.</source>
            <translation>خاموشی صرف خاموشی بھی ہو سکتی ہے۔ اگر بچہ بیمار لگے یا اسے جگانا غیر معمولی طور پر مشکل ہو تو کھیل چھوڑیں اور مشورہ لیں۔</translation>
        </message>
        <message>
            <source>Ready.</source>
            <translation>تیار۔</translation>
        </message>
        <message>
            <source>Received by %1, %2.</source>
            <translation>‏%1 کو ملی: %2۔</translation>
        </message>
        <message>
            <source>Replace</source>
            <translation>بدلیں</translation>
        </message>
        <message>
            <source>Replaced</source>
            <translation>بدل دیا</translation>
        </message>
        <message numerus="yes">
            <source>Replaced %1 days after it came.</source>
            <translation>
                <numerusform>آنے کے %1 دن بعد بدلا جاتا ہے۔</numerusform>
                <numerusform>آنے کے %1 دن بعد بدلا جاتا ہے۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Replaced one day after it came.</source>
            <translation>آنے کے ایک دن بعد بدلا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>آرام میں</translation>
        </message>
        <message>
            <source>Resting. Slow, floppy, or just quiet.</source>
            <translation>آرام میں۔ آہستہ، ڈھیلی، یا بس چپ۔</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>سامان بھرنے کا دور</translation>
        </message>
        <message>
            <source>Review due</source>
            <translation>مقصد دیکھنے کا وقت</translation>
        </message>
        <message>
            <source>Revision %1, sent %2.</source>
            <translation>نظرثانی %1، بھیجی گئی: %2۔</translation>
        </message>
        <message>
            <source>Right beside</source>
            <translation>بالکل پاس</translation>
        </message>
        <message>
            <source>Right beside %1, hand within touch.</source>
            <translation>‏%1 کے بالکل پاس، اتنے کہ ہاتھ چھو سکے۔</translation>
        </message>
        <message>
            <source>Rim</source>
            <translation>کنارہ</translation>
        </message>
        <message>
            <source>Rinse the eye gently with lukewarm water, at least 15 minutes.</source>
            <translation>آنکھ کو نیم گرم پانی سے نرمی سے دھوئیں، کم از کم ۱۵ منٹ۔</translation>
        </message>
        <message>
            <source>Rod: %1 mm across, %2 mm long.</source>
            <translation>ڈنڈی: چوڑائی %1 ملی میٹر، لمبائی %2 ملی میٹر۔</translation>
        </message>
        <message>
            <source>Rubber bands</source>
            <translation>ربڑ بینڈ</translation>
        </message>
        <message>
            <source>Running low: %1.</source>
            <translation>کم رہ گیا: %1۔</translation>
        </message>
        <message>
            <source>Safety note</source>
            <translation>حفاظت کی بات</translation>
        </message>
        <message>
            <source>Salty dough can poison dogs and cats: lid on, up high.</source>
            <translation>نمکین آٹا کتوں اور بلیوں کے لیے زہر ہو سکتا ہے: ڈھکن بند، اونچی جگہ۔</translation>
        </message>
        <message>
            <source>Same one, or %1?</source>
            <translation>وہی ایک، یا %1؟</translation>
        </message>
        <message>
            <source>Same room</source>
            <translation>اسی کمرے میں</translation>
        </message>
        <message>
            <source>Saturday</source>
            <translation>ہفتہ</translation>
        </message>
        <message>
            <source>Say about how many go in how many days.</source>
            <translation>بتائیں تقریباً کتنے کتنے دنوں میں ختم ہوتے ہیں۔</translation>
        </message>
        <message>
            <source>Say from which age on. What it is played with sets the earliest.</source>
            <translation>بتائیں کس عمر سے۔ سب سے کم عمر کھیل کی چیزیں طے کرتی ہیں۔</translation>
        </message>
        <message>
            <source>Say how large one piece is, or that it is soft.</source>
            <translation>بتائیں ایک عدد کتنا بڑا ہے، یا یہ کہ وہ نرم ہے۔</translation>
        </message>
        <message>
            <source>Say in a few words what the adult changes, easier and harder each in its own way.</source>
            <translation>چند لفظوں میں بتائیں کہ بڑا کیا بدلتا ہے، آسان اور مشکل دونوں اپنے طریقے سے۔</translation>
        </message>
        <message>
            <source>Say in at most 25 words what the adult does first.</source>
            <translation>زیادہ سے زیادہ 25 لفظوں میں بتائیں کہ بڑا پہلے کیا کرتا ہے۔</translation>
        </message>
        <message>
            <source>Say in at most twelve words what the child hears.</source>
            <translation>زیادہ سے زیادہ بارہ لفظوں میں بتائیں کہ بچہ کیا سنتا ہے۔</translation>
        </message>
        <message>
            <source>Say in one or two lines what to watch for.</source>
            <translation>ایک یا دو سطروں میں بتائیں کہ کس بات کا دھیان رکھنا ہے۔</translation>
        </message>
        <message>
            <source>Say in one or two lines when to stop.</source>
            <translation>ایک یا دو سطروں میں بتائیں کہ کب رکنا ہے۔</translation>
        </message>
        <message>
            <source>Say what can be seen at this step.</source>
            <translation>لکھیں کہ اس درجے پر کیا دکھائی دیتا ہے۔</translation>
        </message>
        <message>
            <source>Say what one of them is called, in at most 80 letters.</source>
            <translation>بتائیں ایک کو کیا کہتے ہیں، زیادہ سے زیادہ 80 حروف۔</translation>
        </message>
        <message>
            <source>Say what the child will do, in the family's words.</source>
            <translation>گھر والوں کے الفاظ میں لکھیں کہ بچہ کیا کرے گا۔</translation>
        </message>
        <message>
            <source>Say what to look for, and when it is looked at.</source>
            <translation>بتائیں کیا دیکھنا ہے، اور کب دیکھا جاتا ہے۔</translation>
        </message>
        <message>
            <source>Say what you saw: no praise for obeying, and no exclamation mark.</source>
            <translation>جو دیکھا وہ بتائیں: بات ماننے پر تعریف نہیں، اور علامتِ تعجب نہیں۔</translation>
        </message>
        <message>
            <source>Say what you see: &quot;Your kite is really tugging.&quot; Then wait.</source>
            <translation>جو دیکھیں وہ کہیں: “تمہاری پتنگ تو بہت کھینچ رہی ہے۔” پھر رکیں۔</translation>
        </message>
        <message>
            <source>Say whether it can be washed.</source>
            <translation>بتائیں کہ یہ دھل سکتا ہے یا نہیں۔</translation>
        </message>
        <message>
            <source>Say whether it holds anything that never goes into a box. What does stays out.</source>
            <translation>بتائیں کہ اس میں کوئی ایسی چیز ہے جو کبھی ڈبے میں نہیں جاتی۔ جس میں ہو وہ باہر رہتا ہے۔</translation>
        </message>
        <message>
            <source>Say whether small pieces come of what is cut or torn.</source>
            <translation>بتائیں کہ کاٹنے یا پھاڑنے سے چھوٹے ٹکڑے بنتے ہیں یا نہیں۔</translation>
        </message>
        <message>
            <source>Say why not earlier.</source>
            <translation>بتائیں کہ پہلے کیوں نہیں۔</translation>
        </message>
        <message>
            <source>Scissors</source>
            <translation>قینچی</translation>
        </message>
        <message>
            <source>Second look, by whom</source>
            <translation>دوسری جانچ، کس نے</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>دیکھ لیا</translation>
        </message>
        <message>
            <source>Sees the box and the home sheet. No plays of others, no kites, no goals.</source>
            <translation>ڈبا اور گھر کا پرچہ دیکھتے ہیں۔ دوسروں کے کھیل، پتنگیں اور مقصد نہیں۔</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet and the goals. No plays, no kites.</source>
            <translation>ڈبا، گھر کا پرچہ اور مقصد دیکھتے ہیں۔ کھیل اور پتنگیں نہیں۔</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet, the plays and the kites. No goals.</source>
            <translation>ڈبا، گھر کا پرچہ، کھیل اور پتنگیں دیکھتے ہیں۔ مقصد نہیں۔</translation>
        </message>
        <message>
            <source>Sees the box, the home sheet, the plays, the kites and the goals. Lets others in.</source>
            <translation>ڈبا، گھر کا پرچہ، کھیل، پتنگیں اور مقصد دیکھتے ہیں۔ دوسروں کو اندر آنے دیتے ہیں۔</translation>
        </message>
        <message>
            <source>September</source>
            <translation>ستمبر</translation>
        </message>
        <message>
            <source>Set it aside.</source>
            <translation>اسے الگ رکھ دیں۔</translation>
        </message>
        <message>
            <source>Shall we look together: floppy, steady or wiggly? Or just start.</source>
            <translation>کیا مل کر دیکھیں: ڈھیلی، سیدھی یا مچلتی؟ یا بس شروع کریں۔</translation>
        </message>
        <message>
            <source>Shared %1</source>
            <translation>‏%1 بانٹا گیا</translation>
        </message>
        <message>
            <source>Shared at %1</source>
            <translation>‏%1 بجے بانٹا گیا</translation>
        </message>
        <message>
            <source>Shared on %1</source>
            <translation>‏%1 کو بانٹا گیا</translation>
        </message>
        <message>
            <source>Shared yesterday</source>
            <translation>کل بانٹا گیا</translation>
        </message>
        <message>
            <source>Shorter: sentences of at most 20 words, steps of at most 40, and words that a ten-year-old reads.</source>
            <translation>مختصر کریں: جملے زیادہ سے زیادہ 20 لفظ، قدم 40، اور ایسے لفظ جو دس سال کا بچہ پڑھ سکے۔</translation>
        </message>
        <message>
            <source>Sitting down to cut. Closed, blades in the fist, when carried.</source>
            <translation>کاٹتے وقت بیٹھیں۔ لے جاتے وقت قینچی بند، اس کے پھل مٹھی میں۔</translation>
        </message>
        <message>
            <source>Sitting the whole time, never walking with it. One straw, one child.</source>
            <translation>سارا وقت بیٹھ کر، اس کے ساتھ کبھی نہ چلیں۔ ایک اسٹرا، ایک بچہ۔</translation>
        </message>
        <message>
            <source>Slow pull together. Or four kite breaths: string out, string in.</source>
            <translation>مل کر آہستہ کھینچیں۔ یا پتنگ کے چار سانس: ڈور باہر، ڈور اندر۔</translation>
        </message>
        <message>
            <source>Slowly, both ways. Stop if pale, giddy or sick.</source>
            <translation>آہستہ، دونوں طرف۔ رنگ پیلا ہو، چکر آئیں یا جی متلائے تو رکیں۔</translation>
        </message>
        <message>
            <source>Small parts</source>
            <translation>چھوٹی چیزیں</translation>
        </message>
        <message>
            <source>Small parts: count them out and count them back.</source>
            <translation>چھوٹی چیزیں: گن کر نکالیں اور گن کر واپس رکھیں۔</translation>
        </message>
        <message>
            <source>Smell</source>
            <translation>بو</translation>
        </message>
        <message>
            <source>So far %1 went in %2.</source>
            <translation>اب تک %2 میں کم: %1۔</translation>
        </message>
        <message>
            <source>Soap and water</source>
            <translation>صابن اور پانی</translation>
        </message>
        <message>
            <source>Soft: it has no size that means anything.</source>
            <translation>نرم: اس کے ناپ کا کوئی مطلب نہیں۔</translation>
        </message>
        <message>
            <source>Some of these practise the same thing.</source>
            <translation>ان میں کچھ ایک ہی چیز کی مشق ہیں۔</translation>
        </message>
        <message>
            <source>Somebody</source>
            <translation>کوئی</translation>
        </message>
        <message>
            <source>Somebody at home may have to avoid %1: not with %2.</source>
            <translation>گھر میں کسی کو شاید اس سے بچنا لازم ہو: %1۔ اس کے ساتھ نہیں: %2۔</translation>
        </message>
        <message>
            <source>Somebody at home may have to avoid milk: not with %1.</source>
            <translation>گھر میں کسی کو شاید دودھ سے بچنا لازم ہو۔ اس کے ساتھ نہیں: %1۔</translation>
        </message>
        <message>
            <source>Somebody at home must avoid latex, and this uses it.</source>
            <translation>گھر میں کسی کے لیے لیٹکس سے بچنا لازم ہے، اور اس میں وہ ہے۔</translation>
        </message>
        <message>
            <source>Somebody at home must avoid latex. Out of the house: %1.</source>
            <translation>گھر میں کسی کے لیے لیٹکس سے بچنا لازم ہے۔ گھر سے باہر: %1۔</translation>
        </message>
        <message>
            <source>Somebody at home must avoid wheat, and this uses it.</source>
            <translation>گھر میں کسی کے لیے گندم سے بچنا لازم ہے، اور اس میں وہ ہے۔</translation>
        </message>
        <message>
            <source>Somebody at home must avoid wheat: not with %1.</source>
            <translation>گھر میں کسی کے لیے گندم سے بچنا لازم ہے۔ اس کے ساتھ نہیں: %1۔</translation>
        </message>
        <message>
            <source>Somebody else</source>
            <translation>کوئی اور</translation>
        </message>
        <message>
            <source>Somebody else wants to join in</source>
            <translation>کوئی اور بھی شامل ہونا چاہتا ہے</translation>
        </message>
        <message>
            <source>Somebody here may put things in the mouth: no %1.</source>
            <translation>شاید یہاں کوئی چیزیں منہ میں ڈالتا ہو: %1 نہیں۔</translation>
        </message>
        <message>
            <source>Somebody under three may be here: no %1.</source>
            <translation>شاید یہاں کوئی تین سال سے چھوٹا ہو: %1 نہیں۔</translation>
        </message>
        <message>
            <source>Something answers, but no files can be kept there. Check the address: it is the one for WebDAV, not the one of a page.</source>
            <translation>کوئی جواب دیتا ہے، مگر وہاں فائلیں نہیں رکھی جا سکتیں۔ پتا دیکھیں: WebDAV کا چاہیے، کسی صفحے کا نہیں۔</translation>
        </message>
        <message>
            <source>Something different this week</source>
            <translation>اس ہفتے کچھ الگ</translation>
        </message>
        <message>
            <source>Something has to come out again.</source>
            <translation>کچھ واپس نکالنا ہے۔</translation>
        </message>
        <message>
            <source>Something looks worn</source>
            <translation>کوئی چیز گھسی ہوئی لگتی ہے</translation>
        </message>
        <message>
            <source>Something may be in the mouth, nose, ear or throat</source>
            <translation>شاید کوئی چیز منہ، ناک، کان یا گلے میں ہے</translation>
        </message>
        <message>
            <source>Something new</source>
            <translation>کچھ نیا</translation>
        </message>
        <message>
            <source>Something noted</source>
            <translation>کچھ لکھا گیا</translation>
        </message>
        <message>
            <source>Something small is lost?</source>
            <translation>کوئی چھوٹی چیز گم ہو گئی؟</translation>
        </message>
        <message>
            <source>Something small is still being looked for.</source>
            <translation>کوئی چھوٹی چیز ابھی ڈھونڈی جا رہی ہے۔</translation>
        </message>
        <message>
            <source>Something splashed in an eye</source>
            <translation>آنکھ میں کچھ چلا گیا</translation>
        </message>
        <message>
            <source>Something that %1 shared has not arrived here yet.</source>
            <translation>‏%1 نے جو بانٹا اس میں سے کچھ ابھی یہاں نہیں پہنچا۔</translation>
        </message>
        <message>
            <source>Something was swallowed</source>
            <translation>کچھ نگل لیا</translation>
        </message>
        <message>
            <source>Spare</source>
            <translation>فالتو</translation>
        </message>
        <message>
            <source>Spares</source>
            <translation>فالتو</translation>
        </message>
        <message>
            <source>Spares are 0 to %1 percent.</source>
            <translation>فالتو 0 سے %1 فیصد تک ہوتا ہے۔</translation>
        </message>
        <message>
            <source>Special: somebody else looks over each line.</source>
            <translation>خاص: ہر سطر کوئی دوسرا شخص جانچتا ہے۔</translation>
        </message>
        <message>
            <source>Spend</source>
            <translation>خرچ</translation>
        </message>
        <message>
            <source>Stay beside the water. Empty it before anyone leaves, and dry the floor.</source>
            <translation>پانی کے پاس رہیں۔ کسی کے بھی اٹھنے سے پہلے خالی کر دیں، اور فرش سکھائیں۔</translation>
        </message>
        <message>
            <source>Stickers</source>
            <translation>اسٹیکر</translation>
        </message>
        <message>
            <source>Stickers stay out of mouths. Count them back.</source>
            <translation>اسٹیکر منہ سے دور رہیں۔ گن کر واپس رکھیں۔</translation>
        </message>
        <message>
            <source>Still to be taken out: %1.</source>
            <translation>ابھی نکالنا باقی: %1۔</translation>
        </message>
        <message>
            <source>Stop the game. Stay near. Games come back later.</source>
            <translation>کھیل روک دیں۔ پاس رہیں۔ کھیل بعد میں پھر ہوں گے۔</translation>
        </message>
        <message>
            <source>Stop when %1</source>
            <translation>رک جائیں جب %1</translation>
        </message>
        <message>
            <source>Stopped early</source>
            <translation>پہلے رک گئے</translation>
        </message>
        <message>
            <source>Straw</source>
            <translation>اسٹرا</translation>
        </message>
        <message>
            <source>Stretchy band</source>
            <translation>کھنچنے والی پٹی</translation>
        </message>
        <message>
            <source>Sunday</source>
            <translation>اتوار</translation>
        </message>
        <message>
            <source>Swollen lips or a rash all over: emergency number too.</source>
            <translation>ہونٹ سوجے ہوں یا سارے جسم پر دانے ہوں: تب بھی ہنگامی نمبر۔</translation>
        </message>
        <message>
            <source>Take one of the words below off, and more fits.</source>
            <translation>نیچے کا کوئی ایک لفظ ہٹائیں، تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>Take out again: %1.</source>
            <translation>واپس نکالیں: %1۔</translation>
        </message>
        <message>
            <source>Take these out of the box now. Keep them where no child can reach them, until they are handed back.</source>
            <translation>یہ چیزیں ابھی ڈبے سے نکالیں۔ واپس دینے تک ایسی جگہ رکھیں جہاں کوئی بچہ نہ پہنچ سکے۔</translation>
        </message>
        <message>
            <source>Take these out of the house, then wash hands and wipe the table.</source>
            <translation>یہ چیزیں گھر سے باہر نکالیں، پھر ہاتھ دھوئیں اور میز پونچھیں۔</translation>
        </message>
        <message>
            <source>Take these out of the house, then wash hands.</source>
            <translation>یہ چیزیں گھر سے باہر نکالیں، پھر ہاتھ دھوئیں۔</translation>
        </message>
        <message>
            <source>Taken out of the collection.</source>
            <translation>مجموعے سے نکال دی گئی۔</translation>
        </message>
        <message>
            <source>Taken out of the house</source>
            <translation>گھر سے باہر نکالا</translation>
        </message>
        <message>
            <source>Thank you for showing me.</source>
            <translation>دکھانے کا شکریہ۔</translation>
        </message>
        <message>
            <source>That does not fit: %1. Nothing was changed. Put it right, then try again.</source>
            <translation>یہ ٹھیک نہیں: %1۔ کچھ نہیں بدلا۔ درست کریں، پھر دوبارہ کوشش کریں۔</translation>
        </message>
        <message>
            <source>That has to come after the day it is agreed.</source>
            <translation>یہ طے ہونے کے دن کے بعد ہونا چاہیے۔</translation>
        </message>
        <message>
            <source>That is a small number, and other things happen in five minutes too.</source>
            <translation>یہ چھوٹا عدد ہے، اور پانچ منٹ میں اور باتیں بھی ہوتی ہیں۔</translation>
        </message>
        <message>
            <source>That is for the family to say. Nothing was changed. Tell them, and they note it.</source>
            <translation>یہ بتانا خاندان کا کام ہے۔ کچھ نہیں بدلا۔ انہیں بتائیں، وہ لکھ لیں گے۔</translation>
        </message>
        <message>
            <source>That is too long: at most %1 letters.</source>
            <translation>یہ بہت لمبا ہے: زیادہ سے زیادہ %1 حروف۔</translation>
        </message>
        <message>
            <source>That is very short. Who does what?</source>
            <translation>یہ بہت مختصر ہے۔ کون کیا کرتا ہے؟</translation>
        </message>
        <message>
            <source>The activities of Lidlark cannot be read, so nothing can be offered. Install it again. What you wrote down is kept.</source>
            <translation>‏Lidlark کی سرگرمیاں پڑھی نہیں جا سکتیں، اس لیے کچھ دکھایا نہیں جا سکتا۔ اسے دوبارہ انسٹال کریں۔ آپ نے جو لکھا وہ محفوظ ہے۔</translation>
        </message>
        <message>
            <source>The box</source>
            <translation>ڈبا</translation>
        </message>
        <message>
            <source>The box has a new lid list: revision %1.</source>
            <translation>ڈبے کی نئی فہرست ہے: نظرثانی %1۔</translation>
        </message>
        <message>
            <source>The box is %1.</source>
            <translation>ڈبا %1 ہے۔</translation>
        </message>
        <message>
            <source>The box is not here.</source>
            <translation>ڈبا یہاں نہیں ہے۔</translation>
        </message>
        <message>
            <source>The cord is thicker than it is long: are the two swapped?</source>
            <translation>ڈوری لمبائی سے زیادہ موٹی ہے: کیا دونوں الٹ گئے؟</translation>
        </message>
        <message>
            <source>The family</source>
            <translation>گھر والے</translation>
        </message>
        <message>
            <source>The home sheet, the box and what came and went, plays, check-ins, goals, our own ways, notes to oneself, and each thing that was noted.</source>
            <translation>گھر کا پرچہ، ڈبا اور جو آیا اور گیا، کھیل، پتنگیں، مقصد، ہمارے طریقے، اپنے نوٹ، اور ہر وہ بات جو لکھی گئی۔</translation>
        </message>
        <message>
            <source>The list on the lid is out of date: revision %1 holds since %2.</source>
            <translation>ڈھکن کی فہرست پرانی ہے: نظرثانی %1 چل رہی ہے، %2 سے۔</translation>
        </message>
        <message>
            <source>The name or the password holds a sign that cannot be sent.</source>
            <translation>نام یا پاس ورڈ میں ایسی علامت ہے جو بھیجی نہیں جا سکتی۔</translation>
        </message>
        <message>
            <source>The name, or a line, is one of ours already: say it another way.</source>
            <translation>یہ نام یا سطر پہلے سے ہمارے پاس ہے: اسے دوسری طرح کہیں۔</translation>
        </message>
        <message>
            <source>The narrow way is wider than the wide one: are the two swapped?</source>
            <translation>تنگ رخ چوڑے رخ سے بڑا ہے: کیا دونوں الٹ گئے؟</translation>
        </message>
        <message>
            <source>The notes to oneself are those of %1. Read them before you hand this folder on.</source>
            <translation>اپنے نوٹ %1 کے ہیں۔ یہ فولڈر کسی کو دینے سے پہلے انہیں پڑھ لیں۔</translation>
        </message>
        <message>
            <source>The parent chooses one activity and reads its caution aloud.</source>
            <translation>ماں یا باپ ایک کھیل چنیں اور اس کی احتیاط اونچی آواز میں پڑھیں۔</translation>
        </message>
        <message>
            <source>The parent counts everything back in, closes the lid and says where the box lives.</source>
            <translation>ماں یا باپ سب گن کر واپس رکھیں، ڈھکن بند کریں اور بتائیں کہ ڈبہ کہاں رہے گا۔</translation>
        </message>
        <message>
            <source>The parent fills in the home sheet: who lives there, ages, allergies.</source>
            <translation>ماں یا باپ گھر کا پرچہ بھریں: کون رہتا ہے، عمریں، الرجی۔</translation>
        </message>
        <message>
            <source>The parent makes it easier once and harder once.</source>
            <translation>ماں یا باپ ایک بار اسے آسان اور ایک بار مشکل کریں۔</translation>
        </message>
        <message>
            <source>The parent opens the box and finds each thing on the lid list.</source>
            <translation>ماں یا باپ ڈبہ کھولیں اور فہرست کی ہر چیز ڈھونڈیں۔</translation>
        </message>
        <message>
            <source>The parent plays it with the child. You watch, and your hands stay still.</source>
            <translation>ماں یا باپ بچے کے ساتھ کھیلیں۔ آپ دیکھیں، اور ہاتھ نہ لگائیں۔</translation>
        </message>
        <message>
            <source>The phone could not save: the storage is full, or may not be written. Nothing that was kept before is lost. Make some room, then try again.</source>
            <translation>فون محفوظ نہیں کر سکا: جگہ بھر گئی ہے، یا لکھنے کی اجازت نہیں۔ پہلے جو رکھا گیا تھا اس میں سے کچھ ضائع نہیں ہوا۔ کچھ جگہ بنائیں، پھر دوبارہ کوشش کریں۔</translation>
        </message>
        <message>
            <source>The phone of %1 was copied or set back to a backup. It has to be let in again.</source>
            <translation>‏%1 کے فون کی نقل بنی یا اسے پرانی نقل پر لایا گیا۔ اسے پھر سے اندر آنے دینا ہوگا۔</translation>
        </message>
        <message>
            <source>The place does not open: check the name and the password.</source>
            <translation>جگہ نہیں کھلتی: نام اور پاس ورڈ دیکھیں۔</translation>
        </message>
        <message>
            <source>The place is full. Make some room there, or choose another.</source>
            <translation>جگہ بھر گئی ہے۔ وہاں کچھ خالی کریں، یا کوئی اور چنیں۔</translation>
        </message>
        <message>
            <source>The place lets one file push out another, so something could be lost. Choose another.</source>
            <translation>اس جگہ ایک فائل دوسری کو ہٹا دیتی ہے، کچھ کھو سکتا ہے۔ کوئی اور چنیں۔</translation>
        </message>
        <message>
            <source>The question about allergies is still open, so only a few are offered.</source>
            <translation>الرجی کا سوال ابھی باقی ہے، اس لیے صرف چند دکھائی جاتی ہیں۔</translation>
        </message>
        <message>
            <source>The room</source>
            <translation>کمرہ</translation>
        </message>
        <message>
            <source>The same %1</source>
            <translation>وہی %1</translation>
        </message>
        <message>
            <source>The same %1, or %2 in all?</source>
            <translation>وہی %1، یا کل %2؟</translation>
        </message>
        <message>
            <source>The same for any battery, a small thing you do not know, foam, or a mouthful of salty dough: call now.</source>
            <translation>کسی بھی بیٹری، ایسی چھوٹی چیز جسے آپ نہیں جانتے، جھاگ، یا منہ بھر نمکین آٹے کے لیے بھی یہی: ابھی فون کریں۔</translation>
        </message>
        <message>
            <source>The same one</source>
            <translation>وہی ایک</translation>
        </message>
        <message>
            <source>The same ones</source>
            <translation>وہی</translation>
        </message>
        <message>
            <source>The same ones, or %1 in all?</source>
            <translation>وہی، یا کل %1؟</translation>
        </message>
        <message>
            <source>The same words as “%1”. Each step needs its own.</source>
            <translation>وہی الفاظ جو ”%1“ کے ہیں۔ ہر درجے کے اپنے الفاظ ہوں۔</translation>
        </message>
        <message>
            <source>The server cannot show that it is the one it says it is. Nothing was sent to it. Ask whoever looks after it for a valid certificate.</source>
            <translation>سرور ثابت نہیں کر سکتا کہ وہ وہی ہے جو کہتا ہے۔ اسے کچھ نہیں بھیجا گیا۔ جو اسے دیکھتا ہے اس سے درست سرٹیفکیٹ مانگیں۔</translation>
        </message>
        <message>
            <source>The settings of this phone, and other families on it.</source>
            <translation>اس فون کی ترتیبات، اور اس پر موجود دوسرے خاندان۔</translation>
        </message>
        <message>
            <source>The shared place answered in a way that Lidlark does not understand. Check the address.</source>
            <translation>مشترک جگہ کا جواب Lidlark نہیں سمجھا۔ پتا دیکھیں۔</translation>
        </message>
        <message>
            <source>The shared place cannot be reached now. Nothing is lost; Lidlark tries again later.</source>
            <translation>مشترک جگہ ابھی نہیں ملتی۔ کچھ نہیں کھویا؛ Lidlark بعد میں پھر کوشش کرے گا۔</translation>
        </message>
        <message>
            <source>The shared place cannot show that it is the one it says. Nothing was sent. Check the address, or ask whoever runs it.</source>
            <translation>مشترک جگہ ثابت نہیں کر سکتی کہ وہ وہی ہے۔ کچھ نہیں بھیجا گیا۔ پتا دیکھیں، یا جو اسے چلاتا ہے اس سے پوچھیں۔</translation>
        </message>
        <message>
            <source>The shared place does not let this phone in. Check the name and the password.</source>
            <translation>مشترک جگہ اس فون کو اندر نہیں آنے دیتی۔ نام اور پاس ورڈ دیکھیں۔</translation>
        </message>
        <message>
            <source>The shared place has lost something that was there. This phone brings its part again.</source>
            <translation>مشترک جگہ سے کچھ کھو گیا جو وہاں تھا۔ یہ فون اپنا حصہ پھر لاتا ہے۔</translation>
        </message>
        <message>
            <source>The shared place is busy. Lidlark tries again later.</source>
            <translation>مشترک جگہ مصروف ہے۔ Lidlark بعد میں پھر کوشش کرے گا۔</translation>
        </message>
        <message>
            <source>The shared place is full. What you noted stays on this phone until there is room.</source>
            <translation>مشترک جگہ بھر گئی ہے۔ آپ کا لکھا اس فون پر رہے گا جب تک گنجائش ہو۔</translation>
        </message>
        <message>
            <source>The shelf has enough.</source>
            <translation>شیلف پر کافی ہے۔</translation>
        </message>
        <message>
            <source>The therapist</source>
            <translation>تھراپسٹ</translation>
        </message>
        <message>
            <source>The whole box</source>
            <translation>پورا ڈبا</translation>
        </message>
        <message>
            <source>Then call the poison line.</source>
            <translation>پھر زہر کی ہیلپ لائن پر فون کریں۔</translation>
        </message>
        <message>
            <source>Therapist</source>
            <translation>تھراپسٹ</translation>
        </message>
        <message>
            <source>There are still clouds in the way.</source>
            <translation>راستے میں اب بھی بادل ہیں۔</translation>
        </message>
        <message>
            <source>There is no box in this build yet.</source>
            <translation>اس مجموعے میں ابھی کوئی ڈبہ نہیں۔</translation>
        </message>
        <message>
            <source>There is no shared place yet. Choose one under &quot;Shared place&quot;.</source>
            <translation>ابھی کوئی مشترک جگہ نہیں۔ “مشترک جگہ” میں ایک چنیں۔</translation>
        </message>
        <message>
            <source>There is nothing for this sheet at that place. Check the address; an older sheet ends when a new one is made.</source>
            <translation>اس جگہ پر اس پرچے کے لیے کچھ نہیں ہے۔ پتا دیکھ لیں؛ نیا پرچہ بنتے ہی پرانا ختم ہو جاتا ہے۔</translation>
        </message>
        <message>
            <source>There were clouds in the way.</source>
            <translation>راستے میں بادل تھے۔</translation>
        </message>
        <message>
            <source>These are for the other hand. Put them back.</source>
            <translation>یہ دوسرے ہاتھ کی ہے۔ واپس رکھ دیں۔</translation>
        </message>
        <message>
            <source>These are nine good words, but one of them is another than was shown. Compare them with the other phone.</source>
            <translation>یہ نو درست لفظ ہیں، مگر ان میں سے ایک وہ نہیں جو دکھایا گیا تھا۔ دوسرے فون سے ملائیں۔</translation>
        </message>
        <message>
            <source>Think what the container held: does anyone here react to it?</source>
            <translation>سوچیں کہ برتن میں پہلے کیا تھا: کیا یہاں کسی کو اس سے ری ایکشن ہوتا ہے؟</translation>
        </message>
        <message>
            <source>This address begins with http: anybody on the way could read the password. Use the one with https.</source>
            <translation>یہ پتا http سے شروع ہوتا ہے: راستے میں کوئی بھی پاس ورڈ پڑھ سکتا ہے۔ https والا استعمال کریں۔</translation>
        </message>
        <message>
            <source>This afternoon</source>
            <translation>آج سہ پہر</translation>
        </message>
        <message>
            <source>This box has no %1.</source>
            <translation>اس ڈبے میں %1 نہیں ہے۔</translation>
        </message>
        <message>
            <source>This cannot go to a box: %1.</source>
            <translation>یہ ڈبے میں نہیں جا سکتا: %1۔</translation>
        </message>
        <message>
            <source>This evening</source>
            <translation>آج شام</translation>
        </message>
        <message>
            <source>This file cannot be opened. Check how it is written, or put in the stick it lies on.</source>
            <translation>یہ فائل نہیں کھلتی۔ اس کی لکھائی دیکھیں، یا وہ اسٹک لگائیں جس پر یہ ہے۔</translation>
        </message>
        <message>
            <source>This file is damaged or is not a Lidlark store: %1. It was left as it is. Use another file, or ask for a copy from another phone of your crew.</source>
            <translation>یہ فائل خراب ہے یا Lidlark کا ذخیرہ نہیں: %1۔ اسے ویسا ہی چھوڑ دیا گیا۔ کوئی اور فائل لیں، یا اپنے کسی ساتھی کے فون سے نقل مانگیں۔</translation>
        </message>
        <message>
            <source>This file is damaged or not all there. Ask for it again. Nothing was taken in.</source>
            <translation>یہ فائل خراب یا ادھوری ہے۔ دوبارہ مانگیں۔ کچھ نہیں لیا گیا۔</translation>
        </message>
        <message>
            <source>This file is too large to be one that Lidlark hands over.</source>
            <translation>یہ فائل Lidlark کی دی ہوئی فائل کے لیے بہت بڑی ہے۔</translation>
        </message>
        <message>
            <source>This folder is not there. Check how it is written, or put in the stick it lies on.</source>
            <translation>یہ فولڈر وہاں نہیں۔ اس کی لکھائی دیکھیں، یا وہ اسٹک لگائیں جس پر یہ ہے۔</translation>
        </message>
        <message>
            <source>This game has changed since your therapist's yes. Ask your therapist.</source>
            <translation>آپ کے تھراپسٹ کی ہاں کے بعد یہ کھیل بدل گیا ہے۔ اپنے تھراپسٹ سے پوچھیں۔</translation>
        </message>
        <message>
            <source>This home has no %1.</source>
            <translation>اس گھر میں %1 نہیں ہے۔</translation>
        </message>
        <message>
            <source>This is a latex-free home now.</source>
            <translation>یہ گھر اب لیٹکس کے بغیر ہے۔</translation>
        </message>
        <message>
            <source>This is a wheat-free home for play now.</source>
            <translation>یہ گھر اب کھیل کے لیے گندم کے بغیر ہے۔</translation>
        </message>
        <message>
            <source>This is no address of a place. It looks like https://example.org/crew, or like a folder of this phone: /home/crew.</source>
            <translation>یہ کسی جگہ کا پتا نہیں۔ پتا ایسا ہوتا ہے: https://example.org/crew یا اس فون کا فولڈر: /home/crew۔</translation>
        </message>
        <message>
            <source>This is no file that Lidlark hands over. It was left as it is.</source>
            <translation>یہ وہ فائل نہیں جو Lidlark دیتا ہے۔ اسے ویسا ہی چھوڑ دیا گیا۔</translation>
        </message>
        <message>
            <source>This is the address of a page for people. Copy the one for WebDAV.</source>
            <translation>یہ لوگوں کے لیے صفحے کا پتا ہے۔ WebDAV والا پتا نقل کریں۔</translation>
        </message>
        <message>
            <source>This item has almost nothing to do in this box: one play takes it.</source>
            <translation>اس ڈبے میں اس چیز کا تقریباً کوئی کام نہیں: صرف ایک کھیل میں لگتی ہے۔</translation>
        </message>
        <message>
            <source>This item has nothing to do in this box: no play takes it.</source>
            <translation>اس ڈبے میں اس چیز کا کوئی کام نہیں: کسی کھیل میں نہیں لگتی۔</translation>
        </message>
        <message>
            <source>This morning</source>
            <translation>آج صبح</translation>
        </message>
        <message>
            <source>This phone is not in the crew any more. What it holds stays here; nothing new comes or goes.</source>
            <translation>یہ فون اب ساتھیوں میں نہیں۔ جو اس پر ہے وہ یہیں رہتا ہے؛ نیا کچھ نہ آتا ہے نہ جاتا ہے۔</translation>
        </message>
        <message>
            <source>This phone packs, and does not know this child. Hand the box over on the therapist's phone. Nothing was changed.</source>
            <translation>یہ فون ڈبے بھرنے کے لیے ہے اور اس بچے کو نہیں جانتا۔ ڈبہ تھراپسٹ کے فون پر حوالے کریں۔ کچھ نہیں بدلا گیا۔</translation>
        </message>
        <message>
            <source>This phone was set back to an older copy. It shares nothing until somebody of the crew lets it in again.</source>
            <translation>یہ فون پرانی نقل پر لایا گیا۔ جب تک کوئی ساتھی اسے پھر اندر نہ آنے دے، یہ کچھ نہیں بانٹتا۔</translation>
        </message>
        <message>
            <source>This phone's clock shows %1 %2. Set the date, then open Lidlark again. Nothing was changed.</source>
            <translation>اس فون کی گھڑی %1 %2 دکھاتی ہے۔ تاریخ درست کریں، پھر Lidlark دوبارہ کھولیں۔ کچھ نہیں بدلا۔</translation>
        </message>
        <message>
            <source>This phone's clock shows %1. Set the date, then open Lidlark again. Nothing was changed.</source>
            <translation>اس فون کی گھڑی %1 دکھاتی ہے۔ تاریخ درست کریں، پھر Lidlark دوبارہ کھولیں۔ کچھ نہیں بدلا۔</translation>
        </message>
        <message>
            <source>This store comes from another phone. It shares nothing until somebody of the crew lets this phone in.</source>
            <translation>یہ ذخیرہ کسی اور فون کا ہے۔ جب تک کوئی ساتھی اس فون کو اندر نہ آنے دے، یہ کچھ نہیں بانٹتا۔</translation>
        </message>
        <message numerus="yes">
            <source>Thrown away %1 days after it was opened.</source>
            <translation>
                <numerusform>کھولنے کے %1 دن بعد پھینک دیں۔</numerusform>
                <numerusform>کھولنے کے %1 دن بعد پھینک دیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Thrown away one day after it was opened.</source>
            <translation>کھولنے کے ایک دن بعد پھینک دیں۔</translation>
        </message>
        <message>
            <source>Thursday</source>
            <translation>جمعرات</translation>
        </message>
        <message>
            <source>To be put right before this sheet can be reckoned:</source>
            <translation>حساب سے پہلے یہ ٹھیک کریں:</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>Today is its last day.</source>
            <translation>آج اس کا آخری دن ہے۔</translation>
        </message>
        <message>
            <source>Too old, or dried out: %1.</source>
            <translation>بہت پرانا، یا سوکھا ہوا: %1۔</translation>
        </message>
        <message>
            <source>Touch</source>
            <translation>چھونا</translation>
        </message>
        <message>
            <source>Towards steady: %1.</source>
            <translation>سیدھی اڑان کی طرف: %1۔</translation>
        </message>
        <message>
            <source>Toy safety rules of the EU and the UK</source>
            <translation>کھلونوں کی حفاظت کے یورپی اور برطانوی قاعدے</translation>
        </message>
        <message>
            <source>Trouble breathing, drooling or pain: call the emergency number.</source>
            <translation>سانس میں تکلیف، رال بہنا یا درد: ہنگامی نمبر پر فون کریں۔</translation>
        </message>
        <message>
            <source>Trouble breathing, swelling or rash</source>
            <translation>سانس میں تکلیف، سوجن یا دانے</translation>
        </message>
        <message>
            <source>Trouble breathing, swelling, fainting: emergency number now.</source>
            <translation>سانس میں تکلیف، سوجن، بے ہوشی: ابھی ہنگامی نمبر۔</translation>
        </message>
        <message>
            <source>Tuesday</source>
            <translation>منگل</translation>
        </message>
        <message>
            <source>Tugging and whirling</source>
            <translation>کھینچتی اور گھومتی</translation>
        </message>
        <message>
            <source>Tugging and whirling. Wiggly, fizzy, fast.</source>
            <translation>کھینچتی اور گھومتی۔ مچلتی، جوشیلی، تیز۔</translation>
        </message>
        <message>
            <source>Turning</source>
            <translation>گھومنا</translation>
        </message>
        <message>
            <source>Two boxes have the code %1. Give one of them another.</source>
            <translation>دو ڈبوں کا کوڈ %1 ہے۔ ایک کو دوسرا کوڈ دیں۔</translation>
        </message>
        <message>
            <source>Two lists were written without knowing of each other. Send one more that says what holds.</source>
            <translation>دو فہرستیں ایک دوسری سے بے خبر لکھی گئیں۔ ایک اور بھیجیں جو بتائے کہ کون سی بات ٹھیک ہے۔</translation>
        </message>
        <message>
            <source>Two notes of one play, about %1.</source>
            <translation>ایک ہی کھیل کے دو اندراج: %1۔</translation>
        </message>
        <message>
            <source>Two people have changed this box. Look at its list and keep it again.</source>
            <translation>دو لوگوں نے یہ ڈبہ بدلا ہے۔ فہرست دیکھیں اور دوبارہ محفوظ کریں۔</translation>
        </message>
        <message>
            <source>Two people packed this. See that it is not in twice.</source>
            <translation>یہ دو لوگوں نے رکھا۔ دیکھیں کہ دو بار نہ ہو۔</translation>
        </message>
        <message>
            <source>Us</source>
            <translation>ہم</translation>
        </message>
        <message>
            <source>Use it up by tomorrow.</source>
            <translation>کل تک استعمال کر لیں۔</translation>
        </message>
        <message>
            <source>Use some of it soon</source>
            <translation>اس میں سے کچھ جلد استعمال کریں</translation>
        </message>
        <message>
            <source>Use the dough soon</source>
            <translation>آٹا جلد استعمال کریں</translation>
        </message>
        <message>
            <source>Used no more: %1.</source>
            <translation>اب استعمال میں نہیں: %1۔</translation>
        </message>
        <message>
            <source>Used once, then thrown away.</source>
            <translation>ایک بار استعمال، پھر پھینک دیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Children under 8 yrs. can choke or suffocate on uninflated or broken balloons. Adult supervision required. Keep uninflated balloons from children. Discard broken balloons at once.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—۸ سال سے چھوٹے بچوں کا بغیر پھولے یا پھٹے غباروں سے گلا بند ہو سکتا ہے یا دم گھٹ سکتا ہے۔ بڑے کی نگرانی لازم ہے۔ بغیر پھولے غبارے بچوں سے دور رکھیں۔ پھٹے غبارے فوراً پھینک دیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Small parts. Not for children under 3 yrs.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—چھوٹی چیزیں۔ ۳ سال سے چھوٹے بچوں کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—This toy is a marble. Not for children under 3 yrs.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—یہ کھلونا کنچا ہے۔ ۳ سال سے چھوٹے بچوں کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—This toy is a small ball. Not for children under 3 yrs.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—یہ کھلونا چھوٹی گیند ہے۔ ۳ سال سے چھوٹے بچوں کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Toy contains a marble. Not for children under 3 yrs.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—کھلونے میں کنچا ہے۔ ۳ سال سے چھوٹے بچوں کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>WARNING: CHOKING HAZARD—Toy contains a small ball. Not for children under 3 yrs.</source>
            <translation>خبردار: دم گھٹنے کا خطرہ—کھلونے میں چھوٹی گیند ہے۔ ۳ سال سے چھوٹے بچوں کے لیے نہیں۔</translation>
        </message>
        <message>
            <source>Warning! Children under eight years can choke or suffocate on uninflated or broken balloons. Adult supervision required. Keep uninflated balloons from children. Discard broken balloons at once.</source>
            <translation>خبردار۔ آٹھ سال سے چھوٹے بچوں کا بغیر پھولے یا پھٹے غباروں سے گلا بند ہو سکتا ہے یا دم گھٹ سکتا ہے۔ بڑے کی نگرانی لازم ہے۔ بغیر پھولے غبارے بچوں سے دور رکھیں۔ پھٹے غبارے فوراً پھینک دیں۔</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Marble.</source>
            <translation>خبردار۔ تین سال سے چھوٹے بچوں کے لیے مناسب نہیں۔ کنچا۔</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Small ball.</source>
            <translation>خبردار۔ تین سال سے چھوٹے بچوں کے لیے مناسب نہیں۔ چھوٹی گیند۔</translation>
        </message>
        <message>
            <source>Warning! Not suitable for children under three years. Small parts.</source>
            <translation>خبردار۔ تین سال سے چھوٹے بچوں کے لیے مناسب نہیں۔ چھوٹی چیزیں۔</translation>
        </message>
        <message>
            <source>Was that before the count, or after?</source>
            <translation>وہ گنتی سے پہلے تھا، یا بعد میں؟</translation>
        </message>
        <message>
            <source>Wash it with soap and water, and rinse it.</source>
            <translation>اسے صابن اور پانی سے دھوئیں، اور کھنگالیں۔</translation>
        </message>
        <message>
            <source>Washing machine</source>
            <translation>واشنگ مشین</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>پانی</translation>
        </message>
        <message>
            <source>Water needs an adult right beside. Say so under &quot;Who is here&quot;.</source>
            <translation>پانی کے لیے ایک بڑا بالکل پاس چاہیے۔ “یہاں کون ہے” میں بتائیں۔</translation>
        </message>
        <message>
            <source>We agreed on it together</source>
            <translation>ہم نے مل کر طے کیا</translation>
        </message>
        <message>
            <source>We have not agreed together since then where it stands.</source>
            <translation>تب سے ہم نے مل کر طے نہیں کیا کہ یہ کہاں ہے۔</translation>
        </message>
        <message>
            <source>We look at it again on %1.</source>
            <translation>ہم اسے %1 کو دوبارہ دیکھیں گے۔</translation>
        </message>
        <message>
            <source>We reached it</source>
            <translation>ہم نے اسے پا لیا</translation>
        </message>
        <message>
            <source>Wednesday</source>
            <translation>بدھ</translation>
        </message>
        <message>
            <source>Week from Monday, %1</source>
            <translation>پیر سے ہفتہ، %1</translation>
        </message>
        <message>
            <source>What %1 shared does not follow on what was there before. It was not taken in.</source>
            <translation>‏%1 نے جو بانٹا وہ پہلے سے جڑتا نہیں۔ وہ نہیں لیا گیا۔</translation>
        </message>
        <message>
            <source>What another home or another person keeps to themselves: this phone cannot read it.</source>
            <translation>جو دوسرا گھر یا کوئی اور شخص اپنے پاس رکھتا ہے: یہ فون اسے نہیں پڑھ سکتا۔</translation>
        </message>
        <message>
            <source>What cannot be washed stays with one child: it is never issued again.</source>
            <translation>جو دھل نہیں سکتا وہ ایک بچے کے پاس رہتا ہے: دوبارہ کسی کو نہیں دیا جاتا۔</translation>
        </message>
        <message>
            <source>What goes out is counted home: write each number in a line, with the lid last.</source>
            <translation>جو نکلتا ہے وہ گن کر واپس آتا ہے: ہر تعداد ایک سطر میں لکھیں، ڈھکن آخر میں۔</translation>
        </message>
        <message>
            <source>What has a tick here was in already.</source>
            <translation>جس پر یہاں نشان ہے وہ پہلے سے اندر تھا۔</translation>
        </message>
        <message>
            <source>What is in each box</source>
            <translation>ہر ڈبے میں کیا ہے</translation>
        </message>
        <message>
            <source>What is in the box today, beyond what was noted.</source>
            <translation>آج ڈبے میں کیا ہے، لکھے ہوئے سے ہٹ کر۔</translation>
        </message>
        <message>
            <source>What is in them</source>
            <translation>ان میں کیا ہے</translation>
        </message>
        <message>
            <source>What is in this folder</source>
            <translation>اس فولڈر میں کیا ہے</translation>
        </message>
        <message>
            <source>What is not in it</source>
            <translation>اس میں کیا نہیں ہے</translation>
        </message>
        <message>
            <source>What is played: not shared</source>
            <translation>کھیل: بانٹے نہیں جاتے</translation>
        </message>
        <message>
            <source>What is played: shared with the therapist</source>
            <translation>کھیل: تھراپسٹ کے ساتھ بانٹے جاتے ہیں</translation>
        </message>
        <message>
            <source>What is read there is not what was written. Choose another place.</source>
            <translation>وہاں وہ نہیں پڑھا جاتا جو لکھا گیا تھا۔ کوئی اور جگہ چنیں۔</translation>
        </message>
        <message>
            <source>What is your kite doing now?</source>
            <translation>تمہاری پتنگ اب کیا کر رہی ہے؟</translation>
        </message>
        <message>
            <source>What is your kite doing?</source>
            <translation>تمہاری پتنگ کیا کر رہی ہے؟</translation>
        </message>
        <message>
            <source>What lies in the place cannot be seen, or not at once. Choose another.</source>
            <translation>وہاں جو رکھا ہے وہ نظر نہیں آتا، یا فوراً نہیں آتا۔ کوئی اور جگہ چنیں۔</translation>
        </message>
        <message>
            <source>What stays with the clinic</source>
            <translation>کلینک کے پاس کیا رہتا ہے</translation>
        </message>
        <message>
            <source>What swells in water</source>
            <translation>پانی میں پھولنے والی چیز</translation>
        </message>
        <message>
            <source>What the home lends is not counted in the lid.</source>
            <translation>جو گھر دیتا ہے وہ ڈھکن پر نہیں گنا جاتا۔</translation>
        </message>
        <message>
            <source>What was erased, and check-ins from more than 90 days ago.</source>
            <translation>جو مٹایا گیا، اور 90 دن سے پرانی پتنگیں۔</translation>
        </message>
        <message>
            <source>What was played and not written down.</source>
            <translation>جو کھیلا گیا اور لکھا نہیں گیا۔</translation>
        </message>
        <message>
            <source>What was played is told as far as the family shares it.</source>
            <translation>کیا کھیلا گیا، یہ اتنا ہی بتایا گیا جتنا گھر والے بانٹتے ہیں۔</translation>
        </message>
        <message>
            <source>What was played is told with the yes of %1, %2.</source>
            <translation>کیا کھیلا گیا، یہ %1 کی ہاں سے بتایا گیا، %2۔</translation>
        </message>
        <message>
            <source>What was played, and what adults noticed</source>
            <translation>کیا کھیلا گیا، اور بڑوں نے کیا دیکھا</translation>
        </message>
        <message>
            <source>What was played, and what came of it.</source>
            <translation>کیا کھیلا گیا، اور اس سے کیا نکلا۔</translation>
        </message>
        <message>
            <source>What we do not know</source>
            <translation>جو ہم نہیں جانتے</translation>
        </message>
        <message>
            <source>What we expect</source>
            <translation>جس کی ہمیں توقع ہے</translation>
        </message>
        <message>
            <source>What you spend today</source>
            <translation>آج آپ کا خرچ</translation>
        </message>
        <message>
            <source>Wheat</source>
            <translation>گندم</translation>
        </message>
        <message>
            <source>Wheat in the dough. Wash hands and wipe the table after.</source>
            <translation>آٹے میں گندم ہے۔ بعد میں ہاتھ دھوئیں اور میز پونچھیں۔</translation>
        </message>
        <message>
            <source>Wheat must stay away, says %1, %2.</source>
            <translation>گندم دور رہے، %1 نے کہا، %2۔</translation>
        </message>
        <message>
            <source>When these words were agreed, on %1: %2</source>
            <translation>جب یہ الفاظ طے ہوئے، %1 کو: %2</translation>
        </message>
        <message>
            <source>Where there are two squares, the second is for somebody else, who looks it over.</source>
            <translation>جہاں دو خانے ہیں، دوسرا خانہ کسی اور کا ہے جو جانچتا ہے۔</translation>
        </message>
        <message>
            <source>Which count was the last?</source>
            <translation>آخری گنتی کون سی تھی؟</translation>
        </message>
        <message>
            <source>Which is right?</source>
            <translation>کون سا ٹھیک ہے؟</translation>
        </message>
        <message>
            <source>Why a goal has moved or not: growing, school and play all count.</source>
            <translation>کوئی مقصد کیوں آگے بڑھا یا نہیں: بڑا ہونا، سکول اور کھیل، سب کا حصہ ہے۔</translation>
        </message>
        <message>
            <source>Why: %1</source>
            <translation>وجہ: %1</translation>
        </message>
        <message>
            <source>Wiped</source>
            <translation>پونچھا گیا</translation>
        </message>
        <message>
            <source>With %1. Handed over %2.</source>
            <translation>‏%1 کے پاس۔ دیا گیا: %2۔</translation>
        </message>
        <message>
            <source>With a few minutes more, more fits.</source>
            <translation>چند منٹ زیادہ ہوں تو اور مناسب ہوں گے۔</translation>
        </message>
        <message>
            <source>Within arm's reach of %1.</source>
            <translation>‏%1 سے بازو کی پہنچ میں۔</translation>
        </message>
        <message>
            <source>Words that go with this box</source>
            <translation>اس ڈبے کے ساتھ جانے والے الفاظ</translation>
        </message>
        <message>
            <source>Worn down it cannot be larger than it was.</source>
            <translation>گھس کر یہ پہلے سے بڑا نہیں ہو سکتا۔</translation>
        </message>
        <message>
            <source>Worn down, at least:</source>
            <translation>گھسنے پر کم سے کم:</translation>
        </message>
        <message>
            <source>Worth of each</source>
            <translation>ہر ایک کی قیمت</translation>
        </message>
        <message>
            <source>Write at least one line that makes it easier.</source>
            <translation>کم از کم ایک سطر لکھیں جو اسے آسان کرے۔</translation>
        </message>
        <message>
            <source>Write at least one line that makes it harder.</source>
            <translation>کم از کم ایک سطر لکھیں جو اسے مشکل کرے۔</translation>
        </message>
        <message>
            <source>Write how everything comes home, in at most eight lines.</source>
            <translation>زیادہ سے زیادہ آٹھ سطروں میں لکھیں کہ سب کچھ کیسے واپس آتا ہے۔</translation>
        </message>
        <message>
            <source>Write how it is played with one hand.</source>
            <translation>لکھیں کہ ایک ہاتھ سے کیسے کھیلا جائے۔</translation>
        </message>
        <message>
            <source>Write how many. An empty square says none. Count together at the end of the week.</source>
            <translation>لکھیں کتنے۔ خالی خانے کا مطلب ہے کچھ نہیں۔ ہفتے کے آخر میں مل کر گنیں۔</translation>
        </message>
        <message>
            <source>Write it out: what the one hand does, and how it is played from a chair.</source>
            <translation>تفصیل سے لکھیں: ایک ہاتھ کیا کرتا ہے، اور کرسی سے کیسے کھیلا جائے۔</translation>
        </message>
        <message>
            <source>Write one or two lines to say while playing.</source>
            <translation>کھیل کے دوران کہنے کے لیے ایک یا دو سطریں لکھیں۔</translation>
        </message>
        <message>
            <source>Written by %1, not yet checked by a clinician.</source>
            <translation>تحریر: %1۔ ابھی کسی ماہر نے نہیں دیکھا۔</translation>
        </message>
        <message>
            <source>Written with care, not yet checked by a clinician.</source>
            <translation>احتیاط سے لکھا گیا، ابھی کسی طبی ماہر نے نہیں جانچا۔</translation>
        </message>
        <message>
            <source>Written with care, not yet checked by a clinician. Follow your local rules and your therapist.</source>
            <translation>احتیاط سے لکھا گیا، ابھی کسی طبی ماہر نے نہیں جانچا۔ اپنے علاقے کے قاعدوں اور اپنے تھراپسٹ کی بات مانیں۔</translation>
        </message>
        <message>
            <source>Yesterday</source>
            <translation>گزشتہ کل</translation>
        </message>
        <message>
            <source>Your kite was in the bag.</source>
            <translation>تمہاری پتنگ تھیلے میں تھی۔</translation>
        </message>
        <message>
            <source>Your kite was resting.</source>
            <translation>تمہاری پتنگ آرام میں تھی۔</translation>
        </message>
        <message>
            <source>Your kite was steady.</source>
            <translation>تمہاری پتنگ سیدھی اڑ رہی تھی۔</translation>
        </message>
        <message>
            <source>Your kite was tugging.</source>
            <translation>تمہاری پتنگ کھینچ رہی تھی۔</translation>
        </message>
        <message>
            <source>Your own breath out, slowly. Shoulders down. Sit lower than your child.</source>
            <translation>اپنا سانس آہستہ باہر۔ کندھے نیچے۔ بچے سے نیچے بیٹھیں۔</translation>
        </message>
        <message>
            <source>Your therapist shows only what a clinician has checked.</source>
            <translation>آپ کے تھراپسٹ صرف وہ دکھاتے ہیں جو کسی طبی ماہر نے جانچا ہو۔</translation>
        </message>
        <message>
            <source>Your time with this box ended on %1 %2. What you noted stays with the family. They can ask you again.</source>
            <translation>اس ڈبے کے ساتھ آپ کا وقت %1 %2 کو ختم ہوا۔ آپ کا لکھا خاندان کے پاس رہتا ہے۔ وہ آپ کو پھر بلا سکتے ہیں۔</translation>
        </message>
        <message>
            <source>Your time with this box ended on %1. What you noted stays with the family. They can ask you again.</source>
            <translation>اس ڈبے کے ساتھ آپ کا وقت ختم ہو چکا ہے (%1)۔ آپ کا لکھا خاندان کے پاس رہتا ہے۔ وہ آپ کو پھر بلا سکتے ہیں۔</translation>
        </message>
        <message>
            <source>a box for %1</source>
            <translation>‏%1 کے لیے ڈبا</translation>
        </message>
        <message>
            <source>a build</source>
            <translation>ڈبوں کا کوئی مجموعہ</translation>
        </message>
        <message>
            <source>a counting in of %1</source>
            <translation>گن کر شامل کرنا (%1)</translation>
        </message>
        <message>
            <source>a lid list</source>
            <translation>ڈھکن کی فہرست</translation>
        </message>
        <message>
            <source>a request for %1</source>
            <translation>درخواست (%1)</translation>
        </message>
        <message>
            <source>a stretchy band</source>
            <translation>کھنچنے والی پٹی</translation>
        </message>
        <message>
            <source>about %1 min</source>
            <translation>تقریباً %1 منٹ</translation>
        </message>
        <message>
            <source>adhesive</source>
            <translation>گوند</translation>
        </message>
        <message>
            <source>all back</source>
            <translation>سب واپس</translation>
        </message>
        <message>
            <source>an activity</source>
            <translation>کوئی سرگرمی</translation>
        </message>
        <message>
            <source>an earlier day</source>
            <translation>ایک پچھلا دن</translation>
        </message>
        <message>
            <source>another activity</source>
            <translation>کوئی اور سرگرمی</translation>
        </message>
        <message>
            <source>any %1 in this box</source>
            <translation>اس ڈبے میں کوئی %1</translation>
        </message>
        <message>
            <source>as a ball it passes the hole for small balls</source>
            <translation>گیند کے طور پر یہ چھوٹی گیندوں کے سوراخ سے گزر جاتا ہے</translation>
        </message>
        <message>
            <source>balloons</source>
            <translation>غبارے</translation>
        </message>
        <message>
            <source>bought: all of it</source>
            <translation>خریداری: سب ہو چکی</translation>
        </message>
        <message>
            <source>boxes: none yet</source>
            <translation>ڈبے: ابھی کوئی نہیں</translation>
        </message>
        <message>
            <source>broken</source>
            <translation>ٹوٹا ہوا</translation>
        </message>
        <message>
            <source>cloth near faces</source>
            <translation>چہرے کے پاس کپڑا</translation>
        </message>
        <message>
            <source>code: another clinic's</source>
            <translation>کوڈ: کسی اور کلینک کا</translation>
        </message>
        <message>
            <source>coins</source>
            <translation>سکے</translation>
        </message>
        <message>
            <source>comfy and ready</source>
            <translation>آرام سے اور تیار</translation>
        </message>
        <message>
            <source>contact: at most 60 characters</source>
            <translation>رابطہ: زیادہ سے زیادہ ۶۰ حروف</translation>
        </message>
        <message>
            <source>contact: not plain text</source>
            <translation>رابطہ: یہ سادہ متن نہیں</translation>
        </message>
        <message>
            <source>contact: one line only</source>
            <translation>رابطہ: صرف ایک سطر</translation>
        </message>
        <message>
            <source>cords</source>
            <translation>ڈوریاں</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>گنے گئے</translation>
        </message>
        <message>
            <source>currency: three capital letters</source>
            <translation>کرنسی: تین بڑے حروف</translation>
        </message>
        <message>
            <source>cutting and making</source>
            <translation>کاٹنا اور بنانا</translation>
        </message>
        <message>
            <source>day: before it came back</source>
            <translation>دن: واپس آنے سے پہلے</translation>
        </message>
        <message>
            <source>day: before it came into the box</source>
            <translation>دن: ڈبے میں آنے سے پہلے کا</translation>
        </message>
        <message>
            <source>day: before the goal was agreed</source>
            <translation>دن: مقصد طے ہونے سے پہلے</translation>
        </message>
        <message>
            <source>day: more than 31 days ago</source>
            <translation>دن: ۳۱ دن سے پہلے کا</translation>
        </message>
        <message>
            <source>day: today to a week ahead</source>
            <translation>دن: آج سے ایک ہفتہ آگے تک</translation>
        </message>
        <message>
            <source>days: 1 to 365</source>
            <translation>دن: ۱ سے ۳۶۵</translation>
        </message>
        <message>
            <source>doing it together</source>
            <translation>مل کر کرنا</translation>
        </message>
        <message>
            <source>dough</source>
            <translation>آٹا</translation>
        </message>
        <message>
            <source>drawing and writing</source>
            <translation>تصویر بنانا اور لکھنا</translation>
        </message>
        <message>
            <source>dried out</source>
            <translation>سوکھا ہوا</translation>
        </message>
        <message>
            <source>dye</source>
            <translation>رنگ</translation>
        </message>
        <message>
            <source>egg</source>
            <translation>انڈا</translation>
        </message>
        <message>
            <source>emergency number: only digits, spaces, + and -, at most 20</source>
            <translation>ہنگامی نمبر: صرف ہندسے، خالی جگہ، + اور -، زیادہ سے زیادہ ۲۰</translation>
        </message>
        <message>
            <source>eyes guiding hands</source>
            <translation>آنکھیں ہاتھوں کو راہ دکھائیں</translation>
        </message>
        <message>
            <source>feeling push and pull in muscles</source>
            <translation>پٹھوں میں دھکا اور کھنچاؤ محسوس کرنا</translation>
        </message>
        <message>
            <source>finger-and-thumb pick-up</source>
            <translation>انگلی اور انگوٹھے سے اٹھانا</translation>
        </message>
        <message>
            <source>foam</source>
            <translation>جھاگ</translation>
        </message>
        <message>
            <source>foil</source>
            <translation>فوائل</translation>
        </message>
        <message>
            <source>food boxes</source>
            <translation>کھانے کے برتن</translation>
        </message>
        <message>
            <source>for the left hand</source>
            <translation>بائیں ہاتھ کے لیے</translation>
        </message>
        <message>
            <source>for the right hand</source>
            <translation>دائیں ہاتھ کے لیے</translation>
        </message>
        <message>
            <source>forks</source>
            <translation>کھانے کے کانٹے</translation>
        </message>
        <message>
            <source>found: nothing named</source>
            <translation>ملا: کسی کا نام نہیں</translation>
        </message>
        <message>
            <source>getting dressed</source>
            <translation>کپڑے پہننا</translation>
        </message>
        <message>
            <source>getting ready to go</source>
            <translation>باہر جانے کی تیاری</translation>
        </message>
        <message>
            <source>goal: it has ended</source>
            <translation>مقصد: ختم ہو چکا ہے</translation>
        </message>
        <message>
            <source>goal: it has not ended</source>
            <translation>مقصد: ختم نہیں ہوا</translation>
        </message>
        <message>
            <source>grading: only the therapist pins one</source>
            <translation>درجہ: صرف تھراپسٹ مقرر کرتا ہے</translation>
        </message>
        <message>
            <source>holding on to an idea</source>
            <translation>بات ذہن میں رکھنا</translation>
        </message>
        <message>
            <source>home without wheat</source>
            <translation>گندم کے بغیر گھر</translation>
        </message>
        <message>
            <source>in place of %1</source>
            <translation>‏%1 کی جگہ</translation>
        </message>
        <message>
            <source>it fits the small parts cylinder</source>
            <translation>یہ چھوٹے پرزوں کے سلنڈر میں سما جاتا ہے</translation>
        </message>
        <message>
            <source>it is a marble</source>
            <translation>یہ کنچا ہے</translation>
        </message>
        <message>
            <source>its %1 fits the small parts cylinder</source>
            <translation>اس کا یہ حصہ چھوٹے پرزوں کے سلنڈر میں سما جاتا ہے: %1</translation>
        </message>
        <message>
            <source>its %1 is a suction cup or dart tip</source>
            <translation>اس کا یہ حصہ چوسنے والی پیالی یا تیر کی نوک ہے: %1</translation>
        </message>
        <message>
            <source>its %1 passes the hole for small balls</source>
            <translation>اس کا یہ حصہ چھوٹی گیندوں کے سوراخ سے گزر جاتا ہے: %1</translation>
        </message>
        <message>
            <source>its cord is longer than 220 mm</source>
            <translation>اس کی ڈوری 220 ملی میٹر سے لمبی ہے</translation>
        </message>
        <message>
            <source>its cord is thinner than 1.5 mm</source>
            <translation>اس کی ڈوری 1.5 ملی میٹر سے پتلی ہے</translation>
        </message>
        <message>
            <source>its loop is wider than 360 mm round</source>
            <translation>اس کے پھندے کا گھیر 360 ملی میٹر سے زیادہ ہے</translation>
        </message>
        <message>
            <source>keeping a beat</source>
            <translation>تال رکھنا</translation>
        </message>
        <message>
            <source>kind: an adult, but born less than 18 years ago</source>
            <translation>قسم: بڑا، مگر ۱۸ سال سے کم پہلے پیدا ہوا</translation>
        </message>
        <message>
            <source>knowing where my body is</source>
            <translation>اپنا جسم کہاں ہے، یہ جاننا</translation>
        </message>
        <message>
            <source>latex</source>
            <translation>لیٹکس</translation>
        </message>
        <message>
            <source>latex-free home</source>
            <translation>لیٹکس کے بغیر گھر</translation>
        </message>
        <message>
            <source>learning by touch</source>
            <translation>چھو کر سیکھنا</translation>
        </message>
        <message>
            <source>lifting</source>
            <translation>چیزیں اٹھانا</translation>
        </message>
        <message>
            <source>lost</source>
            <translation>گم</translation>
        </message>
        <message>
            <source>milk</source>
            <translation>دودھ</translation>
        </message>
        <message>
            <source>mouth and breath play</source>
            <translation>منہ اور سانس کا کھیل</translation>
        </message>
        <message>
            <source>mouths: pica stands as yes; say no to that first</source>
            <translation>منہ: پائیکا ہو تو “ہاں” ہی رہتا ہے؛ پہلے اسے “نہیں” کریں</translation>
        </message>
        <message>
            <source>movement and balance sense</source>
            <translation>حرکت اور توازن کی حس</translation>
        </message>
        <message>
            <source>moving about</source>
            <translation>چلنا پھرنا</translation>
        </message>
        <message>
            <source>moving things inside one hand</source>
            <translation>ایک ہاتھ کے اندر چیزیں سرکانا</translation>
        </message>
        <message>
            <source>no date</source>
            <translation>کوئی تاریخ نہیں</translation>
        </message>
        <message>
            <source>no name</source>
            <translation>بے نام</translation>
        </message>
        <message>
            <source>noise</source>
            <translation>شور</translation>
        </message>
        <message>
            <source>not too hard, not too soft</source>
            <translation>نہ بہت زور سے، نہ بہت نرم</translation>
        </message>
        <message>
            <source>noticing and matching by eye</source>
            <translation>آنکھ سے دیکھنا اور ملانا</translation>
        </message>
        <message>
            <source>now</source>
            <translation>اب</translation>
        </message>
        <message>
            <source>nut</source>
            <translation>گری دار میوے</translation>
        </message>
        <message>
            <source>on %1</source>
            <translation>‏%1 کو</translation>
        </message>
        <message>
            <source>on Friday</source>
            <translation>جمعے کو</translation>
        </message>
        <message>
            <source>on Friday afternoon</source>
            <translation>جمعے کی سہ پہر</translation>
        </message>
        <message>
            <source>on Friday evening</source>
            <translation>جمعے کی شام</translation>
        </message>
        <message>
            <source>on Friday morning</source>
            <translation>جمعے کی صبح</translation>
        </message>
        <message>
            <source>on Monday</source>
            <translation>پیر کو</translation>
        </message>
        <message>
            <source>on Monday afternoon</source>
            <translation>پیر کی سہ پہر</translation>
        </message>
        <message>
            <source>on Monday evening</source>
            <translation>پیر کی شام</translation>
        </message>
        <message>
            <source>on Monday morning</source>
            <translation>پیر کی صبح</translation>
        </message>
        <message>
            <source>on Saturday</source>
            <translation>ہفتے کو</translation>
        </message>
        <message>
            <source>on Saturday afternoon</source>
            <translation>ہفتے کی سہ پہر</translation>
        </message>
        <message>
            <source>on Saturday evening</source>
            <translation>ہفتے کی شام</translation>
        </message>
        <message>
            <source>on Saturday morning</source>
            <translation>ہفتے کی صبح</translation>
        </message>
        <message>
            <source>on Sunday</source>
            <translation>اتوار کو</translation>
        </message>
        <message>
            <source>on Sunday afternoon</source>
            <translation>اتوار کی سہ پہر</translation>
        </message>
        <message>
            <source>on Sunday evening</source>
            <translation>اتوار کی شام</translation>
        </message>
        <message>
            <source>on Sunday morning</source>
            <translation>اتوار کی صبح</translation>
        </message>
        <message>
            <source>on Thursday</source>
            <translation>جمعرات کو</translation>
        </message>
        <message>
            <source>on Thursday afternoon</source>
            <translation>جمعرات کی سہ پہر</translation>
        </message>
        <message>
            <source>on Thursday evening</source>
            <translation>جمعرات کی شام</translation>
        </message>
        <message>
            <source>on Thursday morning</source>
            <translation>جمعرات کی صبح</translation>
        </message>
        <message>
            <source>on Tuesday</source>
            <translation>منگل کو</translation>
        </message>
        <message>
            <source>on Tuesday afternoon</source>
            <translation>منگل کی سہ پہر</translation>
        </message>
        <message>
            <source>on Tuesday evening</source>
            <translation>منگل کی شام</translation>
        </message>
        <message>
            <source>on Tuesday morning</source>
            <translation>منگل کی صبح</translation>
        </message>
        <message>
            <source>on Wednesday</source>
            <translation>بدھ کو</translation>
        </message>
        <message>
            <source>on Wednesday afternoon</source>
            <translation>بدھ کی سہ پہر</translation>
        </message>
        <message>
            <source>on Wednesday evening</source>
            <translation>بدھ کی شام</translation>
        </message>
        <message>
            <source>on Wednesday morning</source>
            <translation>بدھ کی صبح</translation>
        </message>
        <message>
            <source>on the list</source>
            <translation>فہرست میں</translation>
        </message>
        <message>
            <source>one finger at a time</source>
            <translation>ایک وقت میں ایک انگلی</translation>
        </message>
        <message>
            <source>opening things</source>
            <translation>چیزیں کھولنا</translation>
        </message>
        <message>
            <source>paper</source>
            <translation>کاغذ</translation>
        </message>
        <message>
            <source>pegs</source>
            <translation>کلپ</translation>
        </message>
        <message>
            <source>playing with others</source>
            <translation>دوسروں کے ساتھ کھیلنا</translation>
        </message>
        <message>
            <source>poison line: only digits, spaces, + and -, at most 20</source>
            <translation>زہر کی ہیلپ لائن: صرف ہندسے، خالی جگہ، + اور -، زیادہ سے زیادہ ۲۰</translation>
        </message>
        <message>
            <source>puffing games</source>
            <translation>پھونک کے کھیل</translation>
        </message>
        <message>
            <source>reaching across the middle</source>
            <translation>بیچ کے پار پہنچنا</translation>
        </message>
        <message>
            <source>record.json has all of it, for programs. Each file that ends in .csv is one table of it, for a spreadsheet.</source>
            <translation>‏record.json میں یہ سب ہے، پروگراموں کے لیے۔ ‎.csv پر ختم ہونے والی ہر فائل اس کا ایک جدول ہے، اسپریڈ شیٹ کے لیے۔</translation>
        </message>
        <message>
            <source>role: only who packs comes into the clinic</source>
            <translation>کردار: کلینک میں صرف وہی آتا ہے جو ڈبے بھرتا ہے</translation>
        </message>
        <message>
            <source>rubber bands</source>
            <translation>ربڑ بینڈ</translation>
        </message>
        <message>
            <source>salty dough</source>
            <translation>نمکین آٹا</translation>
        </message>
        <message>
            <source>scissors</source>
            <translation>قینچی</translation>
        </message>
        <message>
            <source>settling down</source>
            <translation>سکون میں آنا</translation>
        </message>
        <message>
            <source>slow, floppy, or just quiet</source>
            <translation>آہستہ، ڈھیلی، یا بس چپ</translation>
        </message>
        <message>
            <source>small parts</source>
            <translation>چھوٹی چیزیں</translation>
        </message>
        <message>
            <source>somebody in the crew</source>
            <translation>ساتھیوں میں سے کوئی</translation>
        </message>
        <message>
            <source>something</source>
            <translation>کچھ</translation>
        </message>
        <message>
            <source>soy</source>
            <translation>سویا</translation>
        </message>
        <message>
            <source>spares: 0 to 100 percent</source>
            <translation>فالتو: 0 سے 100 فیصد</translation>
        </message>
        <message>
            <source>spoon, fork and cup</source>
            <translation>چمچ، کانٹا اور پیالی</translation>
        </message>
        <message>
            <source>steady body</source>
            <translation>جسم سنبھالنا</translation>
        </message>
        <message>
            <source>stickers</source>
            <translation>اسٹیکر</translation>
        </message>
        <message>
            <source>still in use</source>
            <translation>ابھی استعمال میں</translation>
        </message>
        <message>
            <source>straws</source>
            <translation>اسٹرا</translation>
        </message>
        <message>
            <source>strong hands</source>
            <translation>مضبوط ہاتھ</translation>
        </message>
        <message>
            <source>strong smells</source>
            <translation>تیز بو</translation>
        </message>
        <message>
            <source>that day</source>
            <translation>وہ دن</translation>
        </message>
        <message>
            <source>that's fine</source>
            <translation>یہ بھی ٹھیک ہے</translation>
        </message>
        <message>
            <source>the activity %1</source>
            <translation>سرگرمی %1</translation>
        </message>
        <message>
            <source>the box of this play</source>
            <translation>اس کھیل کا ڈبا</translation>
        </message>
        <message>
            <source>these words of the goal</source>
            <translation>مقصد کے یہ الفاظ</translation>
        </message>
        <message>
            <source>things for one child only</source>
            <translation>صرف ایک بچے کی چیزیں</translation>
        </message>
        <message>
            <source>this</source>
            <translation>یہ</translation>
        </message>
        <message>
            <source>this afternoon</source>
            <translation>آج سہ پہر</translation>
        </message>
        <message>
            <source>this box</source>
            <translation>یہ ڈبہ</translation>
        </message>
        <message>
            <source>this build</source>
            <translation>ڈبوں کا یہ مجموعہ</translation>
        </message>
        <message>
            <source>this design</source>
            <translation>یہ نمونہ</translation>
        </message>
        <message>
            <source>this evening</source>
            <translation>آج شام</translation>
        </message>
        <message>
            <source>this goal</source>
            <translation>یہ مقصد</translation>
        </message>
        <message>
            <source>this morning</source>
            <translation>آج صبح</translation>
        </message>
        <message>
            <source>this piece of %1</source>
            <translation>یہ ٹکڑا (%1)</translation>
        </message>
        <message>
            <source>this play</source>
            <translation>یہ کھیل</translation>
        </message>
        <message>
            <source>this question</source>
            <translation>یہ سوال</translation>
        </message>
        <message>
            <source>this week</source>
            <translation>اس ہفتے</translation>
        </message>
        <message>
            <source>three-finger hold for drawing tools</source>
            <translation>لکھنے کی چیز تین انگلیوں سے پکڑنا</translation>
        </message>
        <message>
            <source>tin rims</source>
            <translation>ٹین کے کنارے</translation>
        </message>
        <message>
            <source>today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>آنے والا کل</translation>
        </message>
        <message>
            <source>touch</source>
            <translation>چھونا</translation>
        </message>
        <message>
            <source>turning</source>
            <translation>گھومنا</translation>
        </message>
        <message>
            <source>two hands working as a team</source>
            <translation>دو ہاتھ مل کر کام کریں</translation>
        </message>
        <message>
            <source>used up</source>
            <translation>ختم</translation>
        </message>
        <message>
            <source>using a tool</source>
            <translation>اوزار چلانا</translation>
        </message>
        <message>
            <source>water</source>
            <translation>پانی</translation>
        </message>
        <message>
            <source>week: only this home's own phones plan it</source>
            <translation>ہفتہ: صرف اسی گھر کے فون منصوبہ بناتے ہیں</translation>
        </message>
        <message>
            <source>weight: 0 to 9</source>
            <translation>وزن: 0 سے 9</translation>
        </message>
        <message>
            <source>what was asked for</source>
            <translation>جو مانگا گیا</translation>
        </message>
        <message>
            <source>what was typed</source>
            <translation>جو لکھا گیا</translation>
        </message>
        <message>
            <source>wheat</source>
            <translation>گندم</translation>
        </message>
        <message>
            <source>wiggly, fizzy, fast</source>
            <translation>مچلتی، جوشیلی، تیز</translation>
        </message>
        <message>
            <source>working out a new movement</source>
            <translation>نئی حرکت سوچ کر کرنا</translation>
        </message>
        <message>
            <source>worn down, it fits the small parts cylinder</source>
            <translation>گھس کر یہ چھوٹے پرزوں کے سلنڈر میں سما جاتا ہے</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>گزشتہ کل</translation>
        </message>
        <message>
            <source>yesterday afternoon</source>
            <translation>کل سہ پہر</translation>
        </message>
        <message>
            <source>yesterday evening</source>
            <translation>کل شام</translation>
        </message>
        <message>
            <source>yesterday morning</source>
            <translation>کل صبح</translation>
        </message>
        <message>
            <source>“%1” may read like a feeling or an opinion. What would somebody see?</source>
            <translation>‏”%1“ احساس یا رائے لگ سکتا ہے۔ کوئی دیکھے تو کیا دیکھے گا؟</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::AdditionViewModel</name>
        <message>
            <source>%1 In its place: %2.</source>
            <translation>‏%1 اس کی جگہ: %2۔</translation>
        </message>
        <message>
            <source>In place of: %1</source>
            <translation>ان کی جگہ: %1</translation>
        </message>
        <message>
            <source>Latex must stay away from this home.</source>
            <translation>اس گھر سے لیٹکس دور رہے۔</translation>
        </message>
        <message>
            <source>Wheat must stay away from this home.</source>
            <translation>اس گھر سے گندم دور رہے۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BoxViewModel</name>
        <message>
            <source>%1, says %2, %3</source>
            <translation>‏%1، %2 کے مطابق، %3</translation>
        </message>
        <message>
            <source>%1. Or: %2</source>
            <translation>‏%1۔ یا: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n asked for.</source>
            <translation>
                <numerusform>‏%n مانگا گیا۔</numerusform>
                <numerusform>‏%n مانگے گئے۔</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n running low.</source>
            <translation>
                <numerusform>‏%n کم ہو رہا ہے۔</numerusform>
                <numerusform>‏%n کم ہو رہے ہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Lid list R%1</source>
            <translation>ڈھکن کی فہرست R%1</translation>
        </message>
        <message>
            <source>Nobody has said where it is</source>
            <translation>کسی نے نہیں بتایا کہ کہاں ہے</translation>
        </message>
        <message>
            <source>Nothing asked for, nothing low.</source>
            <translation>کچھ نہیں مانگا، کچھ کم نہیں۔</translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>مانگا گیا</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>‏%1 پر</translation>
        </message>
        <message>
            <source>at home</source>
            <translation>گھر پر</translation>
        </message>
        <message>
            <source>take out</source>
            <translation>باہر نکالیں</translation>
        </message>
        <message>
            <source>taken out</source>
            <translation>باہر نکالا</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildBoxViewModel</name>
        <message>
            <source>Added</source>
            <translation>شامل کیا گیا</translation>
        </message>
        <message>
            <source>Age</source>
            <translation>عمر</translation>
        </message>
        <message>
            <source>Allergy</source>
            <translation>الرجی</translation>
        </message>
        <message>
            <source>Goal</source>
            <translation>مقصد</translation>
        </message>
        <message>
            <source>Hand</source>
            <translation>ہاتھ</translation>
        </message>
        <message>
            <source>Home</source>
            <translation>گھر</translation>
        </message>
        <message>
            <source>Instead of %1</source>
            <translation>‏%1 کی جگہ</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>شامل نہیں</translation>
        </message>
        <message>
            <source>Mouth</source>
            <translation>منہ</translation>
        </message>
        <message>
            <source>No latex may go in.</source>
            <translation>لیٹیکس نہ رکھیں۔</translation>
        </message>
        <message>
            <source>No wheat may go in.</source>
            <translation>گندم نہ رکھیں۔</translation>
        </message>
        <message>
            <source>Usually %1</source>
            <translation>عام طور پر %1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildViewModel</name>
        <message>
            <source>%1 for %2</source>
            <translation>‏%1، %2 کے لیے</translation>
        </message>
        <message>
            <source>%1, as designed</source>
            <translation>‏%1، نمونے کے مطابق</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>As designed: %1</source>
            <translation>نمونے کے مطابق: %1</translation>
        </message>
        <message>
            <source>As designed: nothing has to be swapped.</source>
            <translation>نمونے کے مطابق: کچھ بدلنا نہیں۔</translation>
        </message>
        <message>
            <source>Bought on %1 for %2.</source>
            <translation>‏%1 کو %2 میں خریدا۔</translation>
        </message>
        <message>
            <source>Boxes for %1</source>
            <translation>‏%1 کے لیے ڈبے</translation>
        </message>
        <message>
            <source>Packed on %1. Spares: %2 percent. Prices in %3.</source>
            <translation>بھرنے کا دن: %1۔ فالتو: %2 فیصد۔ قیمتیں: %3۔</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>ابھی کسی کا نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::BuildsViewModel</name>
        <message>
            <source>%1. Boxes: %2. Ready: %3.</source>
            <translation>‏%1۔ ڈبے: %2۔ تیار: %3۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CaseloadViewModel</name>
        <message numerus="yes">
            <source>%n boxes</source>
            <translation>
                <numerusform>‏%n ڈبہ</numerusform>
                <numerusform>‏%n ڈبے</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n things to pack.</source>
            <translation>
                <numerusform>‏%n چیز باندھنی ہے۔</numerusform>
                <numerusform>‏%n چیزیں باندھنی ہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be read</source>
            <translation>پڑھا نہیں جا سکتا</translation>
        </message>
        <message>
            <source>Nothing to pack.</source>
            <translation>کچھ باندھنا نہیں۔</translation>
        </message>
        <message>
            <source>Nothing waits</source>
            <translation>کچھ باقی نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ChildViewModel</name>
        <message>
            <source>%1 on the list, %2 in the box</source>
            <translation>فہرست میں %1، ڈبے میں %2</translation>
        </message>
        <message>
            <source>Lid list R%1</source>
            <translation>ڈھکن کی فہرست R%1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CountViewModel</name>
        <message>
            <source>%1 on the lid list</source>
            <translation>ڈھکن کی فہرست میں %1</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>‏%1۔ %2</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CrewLife</name>
        <message>
            <source>%1 said yes to sharing on %2.</source>
            <translation>‏%1 نے %2 کو بانٹنے کے لیے ہاں کہی۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::CrewMembers</name>
        <message>
            <source>A recovery sheet on paper</source>
            <translation>کاغذ پر بحالی کا پرچہ</translation>
        </message>
        <message>
            <source>Packs at the table</source>
            <translation>میز پر ڈبے بھرتے ہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::DesignViewModel</name>
        <message>
            <source>Of %1 plays, %2 can be made with this box and what a home lends.</source>
            <translation>‏%1 میں سے %2 کھیل اس ڈبے اور گھر کی چیزوں سے ہو سکتے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::DesignsViewModel</name>
        <message>
            <source>Kinds of thing: %1. Plays that can be made: %2.</source>
            <translation>چیزوں کی قسمیں: %1۔ ممکن کھیل: %2۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::EverythingViewModel</name>
        <message>
            <source>%1. %2</source>
            <translation>‏%1۔ %2</translation>
        </message>
        <message numerus="yes">
            <source>%n minute(s)</source>
            <translation>
                <numerusform>‏%n منٹ</numerusform>
                <numerusform>‏%n منٹ</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::FloorViewModel</name>
        <message>
            <source>Every piece found</source>
            <translation>ہر ٹکڑا مل گیا</translation>
        </message>
        <message>
            <source>Found it</source>
            <translation>مل گیا</translation>
        </message>
        <message>
            <source>Look for every bit.</source>
            <translation>ہر چھوٹا ٹکڑا ڈھونڈیں۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalNumbersViewModel</name>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>%1: not rated</source>
            <translation>‏%1: رائے نہیں دی</translation>
        </message>
        <message numerus="yes">
            <source>%n goals that ended are left out of these values.</source>
            <translation>
                <numerusform>‏%n ختم شدہ مقصد ان قدروں میں شامل نہیں۔</numerusform>
                <numerusform>‏%n ختم شدہ مقاصد ان قدروں میں شامل نہیں۔</numerusform>
            </translation>
        </message>
        <message>
            <source>Agreed together</source>
            <translation>مل کر طے ہوا</translation>
        </message>
        <message>
            <source>No T-value: nothing rated has a weight</source>
            <translation>‏T قدر نہیں: جن پر رائے دی گئی ان کا وزن نہیں</translation>
        </message>
        <message>
            <source>Rests on %1 of %2 goals</source>
            <translation>‏%2 میں سے %1 مقاصد پر مبنی</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalPageViewModel</name>
        <message>
            <source>%1: here it is now</source>
            <translation>‏%1: اب یہاں ہے</translation>
        </message>
        <message>
            <source>%1: here it stood last</source>
            <translation>‏%1: آخر میں یہاں تھا</translation>
        </message>
        <message>
            <source>Agreed on %1</source>
            <translation>طے ہوا: %1</translation>
        </message>
        <message>
            <source>Agreed on %1, written down by %2</source>
            <translation>طے ہوا: %1۔ لکھنے والے: %2</translation>
        </message>
        <message>
            <source>Earlier words</source>
            <translation>پہلے کے الفاظ</translation>
        </message>
        <message>
            <source>It was to be looked at again %1.</source>
            <translation>اسے %1 کو دوبارہ دیکھنا تھا۔</translation>
        </message>
        <message>
            <source>Its five steps</source>
            <translation>اس کے پانچ درجے</translation>
        </message>
        <message>
            <source>Its last words</source>
            <translation>اس کے آخری الفاظ</translation>
        </message>
        <message>
            <source>Looked at again %1.</source>
            <translation>دوبارہ دیکھیں گے %1۔</translation>
        </message>
        <message>
            <source>Why: %1</source>
            <translation>وجہ: %1</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::GoalsViewModel</name>
        <message>
            <source>Agreed %1. It was to be looked at again %2.</source>
            <translation>طے ہوا %1۔ اسے %2 کو دوبارہ دیکھنا تھا۔</translation>
        </message>
        <message>
            <source>Agreed %1. Looked at again %2.</source>
            <translation>طے ہوا %1۔ دوبارہ دیکھیں گے %2۔</translation>
        </message>
        <message>
            <source>Its words have been changed. What was said of the earlier words stays with them.</source>
            <translation>اس کے الفاظ بدلے گئے ہیں۔ پہلے الفاظ پر جو کہا گیا وہ انہی کے ساتھ ہے۔</translation>
        </message>
        <message>
            <source>Other goals</source>
            <translation>دوسرے مقاصد</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HandedFile</name>
        <message>
            <source>Saved as &quot;%1&quot; in %2. Only phones of the crew can open it.</source>
            <translation>‏“%1” کے نام سے %2 میں محفوظ۔ اسے صرف ساتھیوں کے فون کھول سکتے ہیں۔</translation>
        </message>
        <message>
            <source>There was nothing new in it.</source>
            <translation>اس میں کچھ نیا نہیں تھا۔</translation>
        </message>
        <message>
            <source>What was new in it has been taken in.</source>
            <translation>اس میں جو نیا تھا وہ لے لیا گیا۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HaveReadyViewModel</name>
        <message>
            <source>%1 pieces</source>
            <translation>‏%1 عدد</translation>
        </message>
        <message>
            <source>%1, in place of %2</source>
            <translation>‏%2 کی جگہ %1</translation>
        </message>
        <message>
            <source>%1: something is missing</source>
            <translation>‏%1: کچھ کم ہے</translation>
        </message>
        <message>
            <source>, </source>
            <translation>، </translation>
        </message>
        <message>
            <source>From the box</source>
            <translation>ڈبے سے</translation>
        </message>
        <message>
            <source>From the house</source>
            <translation>گھر سے</translation>
        </message>
        <message>
            <source>The lid list has changed since this was planned. Your therapist sees that too.</source>
            <translation>یہ طے ہونے کے بعد فہرست بدل گئی ہے۔ آپ کی معالج کو بھی نظر آتا ہے۔</translation>
        </message>
        <message>
            <source>in case something is missing</source>
            <translation>اگر کچھ کم ہو</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::HomeSheetViewModel</name>
        <message numerus="yes">
            <source>%1, %n month(s)</source>
            <translation>
                <numerusform>‏%1، %n مہینہ</numerusform>
                <numerusform>‏%1، %n مہینے</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1, %n year(s)</source>
            <translation>
                <numerusform>‏%1، %n سال</numerusform>
                <numerusform>‏%1، %n سال</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, age not said: counts as under three</source>
            <translation>‏%1، عمر نہیں بتائی: تین سال سے کم گنی جاتی ہے</translation>
        </message>
        <message>
            <source>%1, grown-up</source>
            <translation>‏%1، بالغ</translation>
        </message>
        <message>
            <source>Somebody else has said otherwise; the careful answer stands until they change theirs.</source>
            <translation>کسی اور نے الگ بتایا ہے؛ جب تک وہ اپنا جواب نہ بدلے، احتیاط والا جواب قائم ہے۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ItemViewModel</name>
        <message>
            <source>%1 in the box</source>
            <translation>ڈبے میں %1</translation>
        </message>
        <message>
            <source>%1 on the lid list.</source>
            <translation>ڈھکن کی فہرست میں %1۔</translation>
        </message>
        <message>
            <source>None in the box</source>
            <translation>ڈبے میں کوئی نہیں</translation>
        </message>
        <message>
            <source>The numbers do not fit. A count will tell.</source>
            <translation>عدد نہیں ملتے۔ گنتی سے پتا چلے گا۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::JoiningIn</name>
        <message>
            <source>%1 of 9 words</source>
            <translation>۹ میں سے %1 لفظ</translation>
        </message>
        <message>
            <source>All nine words are right.</source>
            <translation>نو کے نو لفظ درست ہیں۔</translation>
        </message>
        <message>
            <source>The code was read by the camera.</source>
            <translation>کوڈ کیمرے سے پڑھ لیا گیا۔</translation>
        </message>
        <message>
            <source>The code was read from the picture.</source>
            <translation>کوڈ تصویر سے پڑھ لیا گیا۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::KiteCardFile</name>
        <message>
            <source>Kite card</source>
            <translation>پتنگ کا کارڈ</translation>
        </message>
        <message>
            <source>Saved as &quot;%1&quot; in %2.</source>
            <translation>‏“%1” کے نام سے %2 میں محفوظ۔</translation>
        </message>
        <message>
            <source>The card could not be saved in %1. Is the phone full, or may nothing be written there?</source>
            <translation>کارڈ %1 میں محفوظ نہیں ہو سکا۔ کیا فون بھرا ہوا ہے، یا وہاں لکھنے کی اجازت نہیں؟</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::LettingIn</name>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>Parent in another home</source>
            <translation>دوسرے گھر میں ماں یا باپ</translation>
        </message>
        <message>
            <source>Sees the box and the goals, and keeps a home sheet, plays and kites of their own. Neither home sees the other's.</source>
            <translation>ڈبا اور مقصد دیکھتے ہیں، اور گھر کا پرچہ، کھیل اور پتنگیں اپنی رکھتے ہیں۔ کوئی گھر دوسرے کا نہیں دیکھتا۔</translation>
        </message>
        <message>
            <source>Sees the designs, the builds, what they cost and whom each box is for, and ticks what is packed. No child's goals, home sheet, plays or kites.</source>
            <translation>نمونے، تیاریاں، ان کی قیمت اور ہر ڈبہ کس کے لیے ہے دیکھتے ہیں، اور جو ڈبے میں ڈلا اس پر نشان لگاتے ہیں۔ کسی بچے کے مقاصد، گھر کا ورق، کھیل یا پتنگیں نہیں۔</translation>
        </message>
        <message>
            <source>Somebody who packs</source>
            <translation>کوئی جو ڈبے بھرتا ہے</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::NotebookViewModel</name>
        <message>
            <source>Agreed %1. We look again %2.</source>
            <translation>‏%1 طے ہوا۔ %2 پھر دیکھیں گے۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnBoxesViewModel</name>
        <message>
            <source>Held back there:</source>
            <translation>وہاں روکی گئی ہے:</translation>
        </message>
        <message>
            <source>In the box in two wordings: send this one, and it is settled.</source>
            <translation>ڈبے میں دو طرح لکھی ہے: یہ والی بھیجیں تو بات طے ہو جائے گی۔</translation>
        </message>
        <message>
            <source>In the box, in older words.</source>
            <translation>ڈبے میں ہے، پرانے الفاظ میں۔</translation>
        </message>
        <message>
            <source>In the box.</source>
            <translation>ڈبے میں ہے۔</translation>
        </message>
        <message numerus="yes">
            <source>In the box: %n of them.</source>
            <translation>
                <numerusform>ڈبے میں: %n عدد۔</numerusform>
                <numerusform>ڈبے میں: %n عدد۔</numerusform>
            </translation>
        </message>
        <message>
            <source>In this box it counts as it was sent before.</source>
            <translation>اس ڈبے میں وہی مانا جاتا ہے جو پہلے بھیجا گیا۔</translation>
        </message>
        <message>
            <source>It counts in this box.</source>
            <translation>اس ڈبے میں یہ مانا جاتا ہے۔</translation>
        </message>
        <message>
            <source>It fits.</source>
            <translation>یہ مناسب ہے۔</translation>
        </message>
        <message>
            <source>It has to come out of the box: somebody at home must avoid it.</source>
            <translation>اسے ڈبے سے نکالنا ہوگا: گھر میں کسی کو اس سے بچنا ہے۔</translation>
        </message>
        <message>
            <source>No longer offered: %1.</source>
            <translation>اب پیش نہیں ہوگا: %1۔</translation>
        </message>
        <message>
            <source>Offered from now on: %1.</source>
            <translation>اب سے پیش ہوگا: %1۔</translation>
        </message>
        <message>
            <source>Said in two ways, and the more careful counts. Send this one, and it is settled.</source>
            <translation>دو طرح بتایا گیا ہے، اور زیادہ محتاط والا مانا جاتا ہے۔ یہ والا بھیجیں تو بات طے ہو جائے گی۔</translation>
        </message>
        <message>
            <source>Still offered, with more to mind: %1.</source>
            <translation>اب بھی پیش ہوگا، زیادہ خیال کے ساتھ: %1۔</translation>
        </message>
        <message>
            <source>What it says does not warn of this yet.</source>
            <translation>اس کی تحریر ابھی اس سے خبردار نہیں کرتی۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnItemListViewModel</name>
        <message>
            <source>A draft</source>
            <translation>مسودہ</translation>
        </message>
        <message>
            <source>It counts in the box of %1</source>
            <translation>ڈبے میں مانا جاتا ہے: %1</translation>
        </message>
        <message>
            <source>One of ours, as you measured it</source>
            <translation>ہماری ایک چیز، جیسے آپ نے ناپی</translation>
        </message>
        <message>
            <source>Ready, and sent to no box yet</source>
            <translation>تیار ہے، ابھی کسی ڈبے میں نہیں بھیجی</translation>
        </message>
        <message>
            <source>Sent to the box of %1, and changed since</source>
            <translation>ڈبے میں بھیجی: %1، پھر بدلی گئی</translation>
        </message>
        <message>
            <source>Without a name yet</source>
            <translation>ابھی نام نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnItemViewModel</name>
        <message>
            <source>A number is missing, or is none.</source>
            <translation>کوئی عدد باقی ہے، یا عدد نہیں۔</translation>
        </message>
        <message>
            <source>A sheet: long, mm</source>
            <translation>چادر: لمبائی، ملی میٹر</translation>
        </message>
        <message>
            <source>A sheet: wide, mm</source>
            <translation>چادر: چوڑائی، ملی میٹر</translation>
        </message>
        <message>
            <source>A size is still to come, so it counts for nothing yet.</source>
            <translation>ابھی ایک ناپ باقی ہے، اس لیے یہ ابھی نہیں گنا جاتا۔</translation>
        </message>
        <message>
            <source>A string pulls it shut</source>
            <translation>ڈوری سے بند ہوتی ہے</translation>
        </message>
        <message>
            <source>A thing of your own</source>
            <translation>آپ کی اپنی چیز</translation>
        </message>
        <message>
            <source>Across inside, mm</source>
            <translation>اندر سے چوڑائی، ملی میٹر</translation>
        </message>
        <message>
            <source>As a ball</source>
            <translation>گیند کی طرح</translation>
        </message>
        <message>
            <source>As a marble</source>
            <translation>کنچے کی طرح</translation>
        </message>
        <message>
            <source>Can be washed</source>
            <translation>دھل سکتا ہے</translation>
        </message>
        <message>
            <source>Cannot be washed</source>
            <translation>دھل نہیں سکتا</translation>
        </message>
        <message>
            <source>Comes back</source>
            <translation>واپس آتا ہے</translation>
        </message>
        <message>
            <source>Comes back smaller</source>
            <translation>چھوٹا ہو کر واپس آتا ہے</translation>
        </message>
        <message>
            <source>Comes back, and is counted</source>
            <translation>واپس آتا ہے، اور گنا جاتا ہے</translation>
        </message>
        <message>
            <source>Cut, torn or pinched into pieces</source>
            <translation>کاٹ، پھاڑ یا نوچ کر ٹکڑے کیا جاتا ہے</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>دن</translation>
        </message>
        <message>
            <source>Days from one look to the next</source>
            <translation>کتنے دن بعد پھر دیکھیں</translation>
        </message>
        <message>
            <source>Days it keeps once opened</source>
            <translation>کھولنے کے بعد کتنے دن</translation>
        </message>
        <message>
            <source>Days until a new one takes its place</source>
            <translation>کتنے دن بعد نیا رکھیں</translation>
        </message>
        <message>
            <source>Deep, mm</source>
            <translation>گہرائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Holes, percent of it</source>
            <translation>سوراخ، کل کا فیصد</translation>
        </message>
        <message>
            <source>In the box</source>
            <translation>ڈبے میں</translation>
        </message>
        <message>
            <source>Lent by the home</source>
            <translation>گھر دیتا ہے</translation>
        </message>
        <message>
            <source>Long, mm</source>
            <translation>لمبائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Looked at before every use</source>
            <translation>ہر استعمال سے پہلے دیکھا جاتا ہے</translation>
        </message>
        <message>
            <source>Loop, all round, mm</source>
            <translation>پھندا، گھیر، ملی میٹر</translation>
        </message>
        <message>
            <source>Neither</source>
            <translation>دونوں نہیں</translation>
        </message>
        <message>
            <source>None of these</source>
            <translation>ان میں سے کوئی نہیں</translation>
        </message>
        <message>
            <source>Nothing small and no long cord.</source>
            <translation>نہ کوئی چھوٹی چیز، نہ لمبی ڈوری۔</translation>
        </message>
        <message>
            <source>Nothing: it has no size to go by.</source>
            <translation>کچھ نہیں: اس کا کوئی ناپ نہیں جس سے اندازہ ہو۔</translation>
        </message>
        <message>
            <source>Opening of a bag, all round, mm</source>
            <translation>تھیلی کا منہ، گھیر، ملی میٹر</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>عدد</translation>
        </message>
        <message>
            <source>Sharp, pointed or in a mouth</source>
            <translation>تیز، نوکدار یا منہ میں</translation>
        </message>
        <message>
            <source>Stays with one child</source>
            <translation>ایک بچے کے پاس رہتا ہے</translation>
        </message>
        <message>
            <source>Stiff: it keeps its shape in a hand</source>
            <translation>سخت: ہاتھ میں شکل نہیں بدلتا</translation>
        </message>
        <message>
            <source>The narrow way, mm</source>
            <translation>تنگ رخ، ملی میٹر</translation>
        </message>
        <message>
            <source>Thick, mm</source>
            <translation>موٹائی، ملی میٹر</translation>
        </message>
        <message>
            <source>Used once only</source>
            <translation>صرف ایک بار کے لیے</translation>
        </message>
        <message>
            <source>Used up in play</source>
            <translation>کھیل میں ختم ہو جاتا ہے</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnListViewModel</name>
        <message>
            <source>A draft</source>
            <translation>مسودہ</translation>
        </message>
        <message>
            <source>In the box of %1</source>
            <translation>ڈبے میں: %1</translation>
        </message>
        <message>
            <source>In the box of %1, in older words</source>
            <translation>ڈبے میں: %1، پرانے الفاظ میں</translation>
        </message>
        <message>
            <source>Ready, and in no box yet</source>
            <translation>تیار ہے، ابھی کسی ڈبے میں نہیں</translation>
        </message>
        <message>
            <source>Without a name yet</source>
            <translation>ابھی نام نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnNumbers</name>
        <message>
            <source>A number from %1 to %2.</source>
            <translation>‏%1 سے %2 تک عدد۔</translation>
        </message>
        <message>
            <source>A whole number from %1 to %2.</source>
            <translation>‏%1 سے %2 تک پورا عدد۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnSolids</name>
        <message>
            <source>A ball</source>
            <translation>گیند</translation>
        </message>
        <message>
            <source>A block</source>
            <translation>بلاک</translation>
        </message>
        <message>
            <source>A disc</source>
            <translation>ٹکیا</translation>
        </message>
        <message>
            <source>A rod</source>
            <translation>ڈنڈی</translation>
        </message>
        <message>
            <source>An egg</source>
            <translation>انڈا</translation>
        </message>
        <message>
            <source>Soft, of no size</source>
            <translation>نرم، بغیر ناپ</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::OwnWritingViewModel</name>
        <message>
            <source>%1: count %2</source>
            <translation>‏%1: گنیں %2</translation>
        </message>
        <message>
            <source>%1: the pieces that come of it</source>
            <translation>‏%1: جو ٹکڑے اس سے بنتے ہیں</translation>
        </message>
        <message>
            <source>A lap</source>
            <translation>گود</translation>
        </message>
        <message>
            <source>A mat</source>
            <translation>چٹائی</translation>
        </message>
        <message>
            <source>A room</source>
            <translation>کمرہ</translation>
        </message>
        <message>
            <source>A table</source>
            <translation>میز</translation>
        </message>
        <message>
            <source>Choice</source>
            <translation>انتخاب</translation>
        </message>
        <message>
            <source>Distance</source>
            <translation>فاصلہ</translation>
        </message>
        <message>
            <source>From which age on?</source>
            <translation>کس عمر سے؟</translation>
        </message>
        <message>
            <source>Hand</source>
            <translation>ہاتھ</translation>
        </message>
        <message>
            <source>In a wheelchair</source>
            <translation>وہیل چیئر میں</translation>
        </message>
        <message>
            <source>Little strength</source>
            <translation>کم طاقت</translation>
        </message>
        <message>
            <source>Loud</source>
            <translation>بلند</translation>
        </message>
        <message>
            <source>Lying on the side</source>
            <translation>کروٹ پر لیٹ کر</translation>
        </message>
        <message>
            <source>Memory</source>
            <translation>یادداشت</translation>
        </message>
        <message>
            <source>Much strength</source>
            <translation>زیادہ طاقت</translation>
        </message>
        <message>
            <source>No hand</source>
            <translation>کوئی ہاتھ نہیں</translation>
        </message>
        <message>
            <source>No mess</source>
            <translation>کچھ گندا نہیں</translation>
        </message>
        <message>
            <source>On a chair</source>
            <translation>کرسی پر</translation>
        </message>
        <message>
            <source>On a lap</source>
            <translation>گود میں</translation>
        </message>
        <message>
            <source>On the floor</source>
            <translation>فرش پر</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>ایک ہاتھ</translation>
        </message>
        <message>
            <source>Ordinary</source>
            <translation>معمول کا</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>انداز</translation>
        </message>
        <message>
            <source>Quiet</source>
            <translation>خاموش</translation>
        </message>
        <message>
            <source>Resistance</source>
            <translation>مزاحمت</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>جسامت</translation>
        </message>
        <message>
            <source>Some strength</source>
            <translation>کچھ طاقت</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>رفتار</translation>
        </message>
        <message>
            <source>Standing</source>
            <translation>کھڑے ہو کر</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>مرحلے</translation>
        </message>
        <message>
            <source>Support</source>
            <translation>سہارا</translation>
        </message>
        <message>
            <source>To wash</source>
            <translation>دھونا ہے</translation>
        </message>
        <message>
            <source>To wipe</source>
            <translation>پونچھنا ہے</translation>
        </message>
        <message>
            <source>Two hands</source>
            <translation>دو ہاتھ</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackBoxViewModel</name>
        <message>
            <source>Handed over.</source>
            <translation>دے دیا گیا۔</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>ابھی کسی کا نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackItemViewModel</name>
        <message>
            <source>%1 in all, %2 still to go in.</source>
            <translation>کل %1، ابھی %2 رکھنے ہیں۔</translation>
        </message>
        <message>
            <source>%1 in all. All of them are in.</source>
            <translation>کل %1۔ سب اندر ہیں۔</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>ابھی کسی کا نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackOffers</name>
        <message>
            <source>Pieces in a pack: a whole number from 1 to %1.</source>
            <translation>پیکٹ میں ٹکڑے: 1 سے %1 تک پورا عدد۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PackTableViewModel</name>
        <message>
            <source>%1 of %2 ready</source>
            <translation>‏%2 میں سے %1 تیار</translation>
        </message>
        <message>
            <source>Handed over.</source>
            <translation>دے دیا گیا۔</translation>
        </message>
        <message>
            <source>nobody yet</source>
            <translation>ابھی کسی کا نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ParcelViewModel</name>
        <message>
            <source>%1 packed, %2 to pack</source>
            <translation>‏%1 باندھا گیا، %2 باقی</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PhoneChildren</name>
        <message>
            <source>%1 (%2)</source>
            <translation>‏%1 (%2)</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>‏%1 (%2 کے ساتھ)</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PieceViewModel</name>
        <message>
            <source>3 days ago</source>
            <translation>۳ دن پہلے</translation>
        </message>
        <message>
            <source>a month</source>
            <translation>ایک مہینہ</translation>
        </message>
        <message>
            <source>a week</source>
            <translation>ایک ہفتہ</translation>
        </message>
        <message>
            <source>a week ago</source>
            <translation>ایک ہفتہ پہلے</translation>
        </message>
        <message>
            <source>no limit of ours</source>
            <translation>ہماری کوئی حد نہیں</translation>
        </message>
        <message>
            <source>not opened</source>
            <translation>کھولا نہیں</translation>
        </message>
        <message>
            <source>today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>two weeks</source>
            <translation>دو ہفتے</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>گزشتہ کل</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PlayViewModel</name>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>As you played it last.</source>
            <translation>جیسے آپ نے پچھلی بار کھیلا۔</translation>
        </message>
        <message>
            <source>Low vision</source>
            <translation>کمزور نظر</translation>
        </message>
        <message>
            <source>One hand</source>
            <translation>ایک ہاتھ</translation>
        </message>
        <message>
            <source>Seated</source>
            <translation>بیٹھ کر</translation>
        </message>
        <message>
            <source>This way it stands first next time.</source>
            <translation>اگلی بار یہی طریقہ پہلے آئے گا۔</translation>
        </message>
        <message>
            <source>Tires fast</source>
            <translation>جلدی تھکن</translation>
        </message>
        <message>
            <source>Without speech</source>
            <translation>بغیر بولے</translation>
        </message>
        <message>
            <source>Your therapist asks for it as written.</source>
            <translation>آپ کے تھراپسٹ اسے جیسا لکھا ہے ویسا چاہتے ہیں۔</translation>
        </message>
        <message>
            <source>Your therapist asks for it this way.</source>
            <translation>آپ کے تھراپسٹ اسے اس طرح چاہتے ہیں۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PrintViewModel</name>
        <message>
            <source>It could not be saved in %1. Is the phone full, or may nothing be written there?</source>
            <translation>‏%1 میں محفوظ نہ ہو سکا۔ کیا فون بھرا ہوا ہے، یا وہاں لکھنے کی اجازت نہیں؟</translation>
        </message>
        <message>
            <source>Nobody here has said yes to sharing. That is under Crew, Shared place.</source>
            <translation>یہاں کسی نے بانٹنے کے لیے ہاں نہیں کہی۔ یہ ساتھی، مشترک جگہ میں ہے۔</translation>
        </message>
        <message>
            <source>Saved as &quot;%1&quot; in %2.</source>
            <translation>‏%2 میں &quot;%1&quot; کے نام سے محفوظ ہو گیا۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PrintsViewModel</name>
        <message>
            <source>A card for a clothes peg</source>
            <translation>کپڑوں کی چٹکی کے لیے کارڈ</translation>
        </message>
        <message>
            <source>All that was asked for, by item and by box</source>
            <translation>جو کچھ مانگا گیا، چیز اور ڈبے کے لحاظ سے</translation>
        </message>
        <message>
            <source>Away from home</source>
            <translation>گھر سے باہر</translation>
        </message>
        <message>
            <source>Build sheet</source>
            <translation>ڈبوں کا حساب</translation>
        </message>
        <message>
            <source>For a home without a phone: what was used up or lost</source>
            <translation>بغیر فون والے گھر کے لیے: کیا ختم ہوا یا گم ہوا</translation>
        </message>
        <message>
            <source>Games that need nothing from the box</source>
            <translation>کھیل جن میں ڈبے سے کچھ نہیں چاہیے</translation>
        </message>
        <message>
            <source>How things stand</source>
            <translation>اب کیا حال ہے</translation>
        </message>
        <message>
            <source>Label for this box</source>
            <translation>اس ڈبے کا لیبل</translation>
        </message>
        <message>
            <source>Labels for all boxes</source>
            <translation>سب ڈبوں کے لیبل</translation>
        </message>
        <message>
            <source>Lid list</source>
            <translation>ڈھکن کی فہرست</translation>
        </message>
        <message>
            <source>Name, box, what to keep away, and how to reach you</source>
            <translation>نام، ڈبا، کس چیز سے بچنا ہے، اور آپ سے رابطہ کیسے ہو</translation>
        </message>
        <message>
            <source>One page to hand on. You see it first.</source>
            <translation>آگے دینے کے لیے ایک صفحہ۔ پہلے آپ دیکھتے ہیں۔</translation>
        </message>
        <message>
            <source>One week on paper</source>
            <translation>کاغذ پر ایک ہفتہ</translation>
        </message>
        <message>
            <source>Pack list</source>
            <translation>بھرنے کی فہرست</translation>
        </message>
        <message>
            <source>Pictures, counts and the words that go with the box</source>
            <translation>تصویریں، گنتی اور ڈبے کے ساتھ جانے والے الفاظ</translation>
        </message>
        <message>
            <source>Restock round</source>
            <translation>سامان بھرنے کا دور</translation>
        </message>
        <message>
            <source>Squares to tick, box by box or item by item</source>
            <translation>نشان کے خانے، ڈبہ بہ ڈبہ یا چیز بہ چیز</translation>
        </message>
        <message>
            <source>The kite on paper</source>
            <translation>کاغذ پر پتنگ</translation>
        </message>
        <message>
            <source>What to buy, and what is in each box</source>
            <translation>کیا خریدنا ہے، اور ہر ڈبے میں کیا ہے</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::PutBackViewModel</name>
        <message>
            <source>%1 of %2</source>
            <translation>‏%2 میں سے %1</translation>
        </message>
        <message>
            <source>none to come</source>
            <translation>واپس آنے کو کچھ نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::QuestionViewModel</name>
        <message>
            <source>About %1</source>
            <translation>‏%1 کے بارے میں</translation>
        </message>
        <message>
            <source>From tomorrow anybody may answer.</source>
            <translation>کل سے کوئی بھی جواب دے سکتا ہے۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::Reminders</name>
        <message>
            <source>It stands on a locked screen, so it names nobody. Write it without a name.</source>
            <translation>یہ لاک اسکرین پر نظر آتا ہے، اس لیے اس میں کسی کا نام نہیں ہوتا۔ بغیر نام کے لکھیں۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RequestViewModel</name>
        <message>
            <source>%1 in the box, %2 on the lid list.</source>
            <translation>ڈبے میں %1، ڈھکن کی فہرست میں %2۔</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>مانگا گیا</translation>
        </message>
        <message>
            <source>Running low</source>
            <translation>کم ہو رہا ہے</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ReviseViewModel</name>
        <message>
            <source>%1 (%2)</source>
            <translation>‏%1 (%2)</translation>
        </message>
        <message>
            <source>%1 until now</source>
            <translation>اب تک %1</translation>
        </message>
        <message>
            <source>No longer offered: %1.</source>
            <translation>اب پیش نہیں ہوں گے: %1۔</translation>
        </message>
        <message>
            <source>Not offered until what is new is counted in: %1.</source>
            <translation>نئی چیزیں گن کر رکھنے تک پیش نہیں ہوں گے: %1۔</translation>
        </message>
        <message>
            <source>Offered as well, once it is counted in: %1.</source>
            <translation>گن کر رکھنے کے بعد یہ بھی پیش ہوں گے: %1۔</translation>
        </message>
        <message>
            <source>The home takes out: %1.</source>
            <translation>گھر والے نکالیں گے: %1۔</translation>
        </message>
        <message>
            <source>The list is as it was. Change something first.</source>
            <translation>فہرست ویسی ہی ہے۔ پہلے کچھ بدلیں۔</translation>
        </message>
        <message>
            <source>The same activities are offered as before.</source>
            <translation>وہی کھیل پیش ہوں گے جو پہلے تھے۔</translation>
        </message>
        <message>
            <source>To be sent, and on the way until it is counted in: %1.</source>
            <translation>بھیجنا ہے، اور گن کر رکھنے تک راستے میں: %1۔</translation>
        </message>
        <message>
            <source>Why: say it in a few words. The family reads it beside the new list.</source>
            <translation>وجہ: چند لفظوں میں لکھیں۔ گھر والے اسے نئی فہرست کے ساتھ پڑھیں گے۔</translation>
        </message>
        <message>
            <source>Why: this is too long. Say it shorter.</source>
            <translation>وجہ: یہ بہت لمبی ہے۔ مختصر لکھیں۔</translation>
        </message>
        <message>
            <source>new on the list</source>
            <translation>فہرست میں نیا</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RoomViewModel</name>
        <message>
            <source>puts things in the mouth</source>
            <translation>چیزیں منہ میں جاتی ہیں</translation>
        </message>
        <message>
            <source>under three</source>
            <translation>تین سال سے کم</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::RoundViewModel</name>
        <message>
            <source>%1, asked for by %2, %3</source>
            <translation>‏%1، %2 نے مانگا، %3</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces</source>
            <translation>
                <numerusform>‏%n عدد</numerusform>
                <numerusform>‏%n عدد</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n to pack</source>
            <translation>
                <numerusform>‏%n باندھنا ہے</numerusform>
                <numerusform>‏%n باندھنے ہیں</numerusform>
            </translation>
        </message>
        <message>
            <source>all packed</source>
            <translation>سب باندھ لیا</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::SheetViewModel</name>
        <message>
            <source>%1, and things without a price</source>
            <translation>‏%1، اور بغیر قیمت کی چیزیں</translation>
        </message>
        <message>
            <source>%1, as designed</source>
            <translation>‏%1، نمونے کے مطابق</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>Bought on %1 for %2.</source>
            <translation>‏%1 کو %2 میں خریدا۔</translation>
        </message>
        <message>
            <source>Boxes: %1. %2</source>
            <translation>ڈبے: %1۔ %2</translation>
        </message>
        <message>
            <source>Nothing to buy.</source>
            <translation>کچھ خریدنا نہیں۔</translation>
        </message>
        <message>
            <source>On the shelf afterwards: %1.</source>
            <translation>بعد میں شیلف پر: %1۔</translation>
        </message>
        <message>
            <source>Set aside, and not needed any more: %1. It goes back on the shelf.</source>
            <translation>الگ رکھا، اب ضرورت نہیں: %1۔ یہ واپس شیلف پر جاتا ہے۔</translation>
        </message>
        <message>
            <source>Still needed: %1. Spares: %2. On the shelf: %3.</source>
            <translation>ابھی چاہیے: %1۔ فالتو: %2۔ شیلف پر: %3۔</translation>
        </message>
        <message>
            <source>Without a design</source>
            <translation>بغیر نمونے کے</translation>
        </message>
        <message>
            <source>packs of %1, to buy: %2, %3</source>
            <translation>‏%1 کے پیکٹ، خریدنے ہیں: %2، %3</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ShelfViewModel</name>
        <message>
            <source>%1 things. Without a price: %2.</source>
            <translation>چیزیں: %1۔ بغیر قیمت: %2۔</translation>
        </message>
        <message>
            <source>%1. Lot %2</source>
            <translation>‏%1۔ لاٹ %2</translation>
        </message>
        <message>
            <source>No price yet</source>
            <translation>ابھی قیمت نہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::SupplyViewModel</name>
        <message>
            <source>A new thing</source>
            <translation>ایک نئی چیز</translation>
        </message>
        <message>
            <source>Free of latex</source>
            <translation>لیٹیکس کے بغیر</translation>
        </message>
        <message>
            <source>Free of wheat</source>
            <translation>گندم کے بغیر</translation>
        </message>
        <message>
            <source>Name: say what it is called.</source>
            <translation>نام: بتائیں اسے کیا کہتے ہیں۔</translation>
        </message>
        <message>
            <source>Nothing is kept yet. Put right what is marked, then keep it.</source>
            <translation>ابھی کچھ محفوظ نہیں ہوا۔ جو نشان زد ہے اسے درست کریں، پھر محفوظ کریں۔</translation>
        </message>
        <message>
            <source>On the shelf: a whole number from 0 to %1.</source>
            <translation>شیلف پر: 0 سے %1 تک پورا عدد۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::TakeOutViewModel</name>
        <message>
            <source>No longer on the lid list</source>
            <translation>اب فہرست میں نہیں</translation>
        </message>
        <message>
            <source>Taken out, says %1, %2.</source>
            <translation>باہر نکالا، %1 کے مطابق، %2۔</translation>
        </message>
        <message>
            <source>These stay</source>
            <translation>یہ رہتے ہیں</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::ThingsFound</name>
        <message>
            <source>From the house, and this home has none.</source>
            <translation>یہ گھر کی چیز ہے، اور اس گھر میں نہیں ہے۔</translation>
        </message>
        <message>
            <source>From the house, not from the box.</source>
            <translation>یہ گھر کی چیز ہے، ڈبے کی نہیں۔</translation>
        </message>
        <message>
            <source>In the box: %1.</source>
            <translation>ڈبے میں: %1۔</translation>
        </message>
        <message>
            <source>None left in the box.</source>
            <translation>ڈبے میں کوئی باقی نہیں۔</translation>
        </message>
        <message>
            <source>Not in this box.</source>
            <translation>اس ڈبے میں نہیں۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::TodayViewModel</name>
        <message>
            <source>%1 %2, %3</source>
            <translation>‏%1 %2، %3</translation>
        </message>
        <message>
            <source>%1 showed us earlier</source>
            <translation>‏%1 نے پہلے دکھایا</translation>
        </message>
        <message>
            <source>%1 showed us just now</source>
            <translation>‏%1 نے ابھی دکھایا</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>Kept for today</source>
            <translation>آج کے لیے رکھا</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::VideoPlanViewModel</name>
        <message>
            <source>%1 minutes. %2.</source>
            <translation>‏%1 منٹ۔ %2۔</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>، </translation>
        </message>
        <message>
            <source>From lid list %1.</source>
            <translation>فہرست %1 سے۔</translation>
        </message>
        <message>
            <source>Lid list %1 is out and not yet confirmed: only what it shares with the one before can be planned.</source>
            <translation>فہرست %1 بھیجی جا چکی، ابھی تصدیق نہیں ہوئی: صرف وہی طے ہو سکتا ہے جو پچھلی فہرست میں بھی ہے۔</translation>
        </message>
        <message>
            <source>Spare, if something is missing</source>
            <translation>اضافی، اگر کچھ کم ہو</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::VideoSessionViewModel</name>
        <message>
            <source>%1.</source>
            <translation>‏%1۔</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>‏%1: %2</translation>
        </message>
        <message>
            <source>, </source>
            <translation>، </translation>
        </message>
        <message>
            <source>In place of %1: not there: %2.</source>
            <translation>‏%1 کی جگہ: موجود نہیں: %2۔</translation>
        </message>
        <message>
            <source>Not there: %1.</source>
            <translation>موجود نہیں: %1۔</translation>
        </message>
        <message>
            <source>Not there: %1. No spare fits.</source>
            <translation>موجود نہیں: %1۔ کوئی اضافی ٹھیک نہیں بیٹھتا۔</translation>
        </message>
        <message>
            <source>Not yet looked for: %1.</source>
            <translation>ابھی دیکھا نہیں گیا: %1۔</translation>
        </message>
        <message>
            <source>The lid list has changed since this was planned: look the plan over.</source>
            <translation>یہ طے ہونے کے بعد فہرست بدل گئی ہے: دوبارہ دیکھ لیں۔</translation>
        </message>
        <message>
            <source>They have everything ready.</source>
            <translation>ان کے پاس سب کچھ تیار ہے۔</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::WeekViewModel</name>
        <message>
            <source>%1. %2</source>
            <translation>‏%1۔ %2</translation>
        </message>
        <message numerus="yes">
            <source>%n minute(s)</source>
            <translation>
                <numerusform>‏%n منٹ</numerusform>
                <numerusform>‏%n منٹ</numerusform>
            </translation>
        </message>
        <message>
            <source>A good week. The very best one could be %1 in a hundred better.</source>
            <translation>اچھا ہفتہ ہے۔ سب سے اچھا ہفتہ سو میں %1 بہتر ہو سکتا ہے۔</translation>
        </message>
        <message>
            <source>It does not fit who is here just now. See Everything for the reason.</source>
            <translation>اس وقت جو یہاں ہیں ان کے ساتھ یہ مناسب نہیں۔ وجہ “سب کچھ” میں دیکھیں۔</translation>
        </message>
        <message>
            <source>Left free</source>
            <translation>خالی چھوڑا</translation>
        </message>
        <message>
            <source>Nothing left to plan</source>
            <translation>منصوبے کو کچھ باقی نہیں</translation>
        </message>
        <message>
            <source>Played</source>
            <translation>کھیلا گیا</translation>
        </message>
        <message>
            <source>That was all there is for this day. It begins again.</source>
            <translation>اس دن کے لیے بس یہی تھا۔ پھر شروع سے آتا ہے۔</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>آج</translation>
        </message>
        <message>
            <source>Tomorrow</source>
            <translation>آنے والا کل</translation>
        </message>
    </context>
    <context>
        <name>lidlark::mobile::WelcomeViewModel</name>
        <message>
            <source>%1, %2</source>
            <translation>‏%1، %2</translation>
        </message>
        <message>
            <source>%1. Puts things in the mouth</source>
            <translation>‏%1۔ چیزیں منہ میں جاتی ہیں</translation>
        </message>
        <message numerus="yes">
            <source>%n year(s)</source>
            <translation>
                <numerusform>‏%n سال</numerusform>
                <numerusform>‏%n سال</numerusform>
            </translation>
        </message>
        <message>
            <source>Give the child a name, or a letter.</source>
            <translation>بچے کو ایک نام دیں، یا ایک حرف۔</translation>
        </message>
        <message>
            <source>age not said</source>
            <translation>عمر نہیں بتائی</translation>
        </message>
        <message>
            <source>under one</source>
            <translation>ایک سال سے کم</translation>
        </message>
    </context>
</TS>
