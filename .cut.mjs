import sharp from 'sharp'; const [f,parts]=process.argv.slice(2); const m=await sharp(f).metadata(); console.log(f,m.width,m.height); const n=Number(parts||3); const h=Math.ceil(m.height/n);
const tiles=[]; for(let i=0;i<n;i++){tiles.push({input:await sharp(f).extract({left:0,top:i*h,width:m.width,height:Math.min(h,m.height-i*h)}).toBuffer(),left:i*(m.width+10),top:0});}
await sharp({create:{width:n*(m.width+10),height:h,channels:3,background:'#888'}}).composite(tiles).png().toFile(f.replace('.png','-c.png'));
