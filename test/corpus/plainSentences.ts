/** Everyday prose of reviews: it tells of people, rooms, films and shops, and claims nothing about the set. */
export const plainSentences: readonly string[] = `
The courier rang twice and left the carton with the neighbour at number 42.
It took two of us and a good deal of patience to get it up the stairs.
Wall brackets start at £25.
The brightest star in that film is a dog called Biscuit.
My daughter is 12 and has opinions about everything.
We watched the match on Saturday; it ended 3–1.
The final went to penalties, and the home side won 4–3.
The film runs for 142 minutes, and we did not look at the clock once.
The series has eight episodes, and we saw six of them in one sitting.
I first wrote about televisions in 1998.
The old portable in the kitchen dates from 1987.
Ring the desk on 0161 496 0122 if you would like the box.
Call 555-0142 between 9 and 5.
The shop closes at half past five on Wednesdays.
Our train left at 18:42, and the set arrived at ten past seven.
The nearest dealer is 14 miles away.
We drove 230 kilometres to collect it.
Delivery costs £15 and takes three working days.
A decent pair of headphones costs £80.
The remote weighs 90 grams and feels like a bar of soap.
The remote takes two batteries, and they were in the box.
The stand comes in two parts and six screws.
Four screws hold the stand, and one of ours was missing.
I have been reviewing for Lanternwick for eleven years.
Lanternwick turns 25 next spring.
Issue 214 carries our guide to cables.
See page 48 for the floor plan of the test room.
The chair in which I sit is older than I am.
The cat claimed the carton within five minutes.
My mother, who is 81, asked where the news had gone.
His flat is on the third floor, and there is no lift.
There are 39 steps to our door, as in the film.
Chapter 7 of the disc has the scene with the rain.
Season two is better than season one, by common consent.
The director shot it in 47 days on an island.
The book has 612 pages and I have read most of them.
It rained for three days, so we stayed in and watched television.
A pot of tea later we began again.
The manual is in fourteen languages, none of them very clear.
It asks for a password of at least eight characters.
The menu has five pages, and the one you need is the last.
Setting it up took twenty minutes, most of them spent on the password.
The app wanted my date of birth, which is nobody's business.
The first update arrived on 3 October and the second a week later.
Firmware 2.4.1 fixed the crash that we had in the first week.
Version 5 of the app is due before Christmas.
The guide on our website has 2,300 words on cables alone.
We had it on loan from 4 September to 20 October.
The sample left us on a Tuesday.
Veltrane was founded in 1952 by two brothers.
Nocthale employs 4,000 people in nine countries.
Orrinvale has its offices above a bakery.
Kasulind sponsors a cycling team this year.
Tamarick has been making quiet furniture with screens in it since 1971.
The company's best year was 2019.
One reader asked whether it would fit his sideboard.
Twelve letters came about last month's column.
Nobody in our house agrees on where it should stand.
The best seat in the house is taken by the dog.
The worst thing about Sunday evenings is Monday.
The cheapest way to improve a living room is to tidy it.
The fastest route to a row is to touch the remote.
The longest film we own is about a mountain.
The lightest thing in the carton was the warranty card.
My largest regret is the sofa.
The least you can do is read the manual.
It was the brightest afternoon of the summer, and we drew the curtains.
The quietest room we have is the larder.
Is there a good reason to buy a television in January?
How much is too much?
What would you do with 85 inches of wall?
Would I pay that? I would not.
If the store offers you the floor model, walk away.
Ask your dealer about fitting before you drill anything.
Two people should carry it, and a third should hold the door.
Mind your back, and mind the lamp.
Do not hang it over a fireplace.
Have an electrician look at the socket if you are in doubt.
A surge protector costs $40 and is worth having.
A bag of crisps at the kiosk now costs £2.79.
Tickets for the cinema were £14 each, and the seats squeaked.
The taxi was £22 and the driver had views.
I would rather spend the money on a holiday.
My sister spent her bonus on one and has not looked back.
The neighbours have a bigger one, as neighbours do.
A bigger living room would be nice too.
More on that in the next issue.
More than one of us fell asleep.
Less talk and more pictures, said the editor.
The less said about the soundtrack the better.
Better luck next time.
That is the better of the two jokes.
I know of no better place for a Sunday afternoon.
There is more to life than television, but not on a wet Thursday.
The sequel is longer and louder, and I left before the end.
The weather was warmer than it should have been in November.
It was cold in the test room, so we wore coats.
The kettle is louder than the traffic.
The dog is heavier than he looks.
Upstairs is darker and quieter, and that is where I read.
The curtains are a deep red, which my wife calls burgundy.
A blue lamp stands beside the sofa.
Green tea was served in black cups.
The white wall behind it was painted twice.
The yellow pages were yellow, once.
The red team beat the blue team by two goals.
In black and white films I forget the colour of the walls.
Nothing beats a fire in winter.
Nobody beats my aunt at cards.
We counted the cars in the chase and lost count at 31.
About half of the audience had left by then.
Half the cast is related to the other half.
Two thirds of the plot make no sense.
A quarter of an hour in, the phone rang.
Three quarters of the way through, the sound failed at the cinema.
It is a film of two halves.
Ten minutes of advertisements preceded it.
The third act drags.
I came second in the office quiz.
First the good news, then the weather.
The news is at six and again at ten.
We begin at nine and end when the tea runs out.
By noon we had the old one on the pavement.
It was midnight before the last screw was in.
At 7 pm the street is full of bicycles.
The photograph on the left was taken in our garden.
Figure 2 shows the test room, with the chair.
Table 1 lists who did what.
Annex 3 holds the raw files.
Photographs are numbered 12 to 31.
The sample's serial number ends in 0417.
Filed on 28 April; three pages, two photographs.
Our index of past tests runs to 340 entries.
You will find the programme on channel 4.
It is repeated on Friday at 21:00.
The disc plays in any machine made since 2006.
She has worked here since 2011 and has never been late.
He is six foot two and bangs his head on our door.
The table is oak and came from my grandfather.
The garage was 34 degrees that afternoon, and so were we.
It was 28 degrees in the shade.
The room is five metres by four and has one window.
We sat three metres away, on the usual chairs.
A sofa two metres from the screen is close enough for most of us.
Our walls are grey and our lamps are off.
Someone had written 5 on the carton in chalk.
He gave us a look worth a thousand words.
I must have told this story a hundred times.
A thousand thanks to the reader who sent the cake.
It was love at first sight, and divorce at the second.
Once in a while a television makes you put down the phone.
Nine times out of ten the cable is to blame.
On a scale of one to ten, my patience was at two.
The quiz had 20 questions and I knew four.
We keep one spare lamp and two spare fuses.
Three of the five jurors are engineers.
Six colleagues took part in the tasting of biscuits.
The youngest of us is 23 and the eldest will not say.
Of the two scripts I prefer the shorter.
The ship sinks at the end, as ships do.
The hero falls from a height of 60 metres and gets up again.
The car reaches 140 miles an hour and then a wall.
The rocket goes up, the curtain comes down.
The tension drops in the second half.
The plot keeps its secret until the last five minutes.
Her voice rises above the orchestra.
He loses half his fortune in the first reel.
The stadium holds 60,000 people and most of them were shouting.
The crowd was brighter than the fireworks.
Its critics are wrong.
I would call that a draw.
Enough of that.
`
  .trim()
  .split('\n');
